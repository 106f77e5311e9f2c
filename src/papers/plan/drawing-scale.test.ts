import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawingScale } from './drawing-scale.ts';

describe('the scale of a drawing', () => {
  // scales of ISO 5455:1979, recommended scales of reduction, 1:5 to 1:500 among others (memory)
  it('is 1:50 for a line of 7.6 m by 2.8 m in a frame of 164 mm by 98 mm, with a bar of 2 m', () => {
    expect(drawingScale({ width: 7.6, height: 2.8 }, { width: 164, height: 98 })).toEqual({
      to: 50,
      perMetre: 20,
      bar: 2,
    });
  });

  it('keeps everything within its frame, and its bar too', () => {
    const size = fc.double({ min: 0.1, max: 400, noNaN: true });
    fc.assert(
      fc.property(size, size, (width, height) => {
        const { perMetre, bar } = drawingScale({ width, height }, { width: 164, height: 98 });
        // a rounding of the last digit is no overflow
        expect(width * perMetre).toBeLessThanOrEqual(164 * (1 + 1e-12));
        expect(height * perMetre).toBeLessThanOrEqual(98 * (1 + 1e-12));
        expect(bar * perMetre).toBeLessThanOrEqual(164);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toSi } from '../../quantity/convert.ts';
import { runSheet } from '../frame.ts';
import { flushFlow, pipesVolume } from './flushing.ts';
import { hardnessSheet } from './hardness.ts';
import { meterAnswer } from './meter-conductivity.ts';

describe('site water', () => {
  it('each degree typed comes back as that degree', () => {
    for (const [unit, output] of [
      ['dH', 'germanDegrees'],
      ['fH', 'frenchDegrees'],
      ['gr/imp gal', 'englishDegrees'],
      ['gr/US gal', 'grainsPerUsGallon'],
      ['mmol/L', 'millimoles'],
    ] as const) {
      const run = runSheet(hardnessSheet, { hardness: toSi(7, 'waterHardness', unit) });
      expect(run.ok && run.value.outputs[output]).toBeCloseTo(7, 9);
    }
  });

  it('more conductivity never counts less, and the paper of the meter goes before the habit', () => {
    const order = ['does not count', 'ask the maker', 'counts'];
    const kappa = fc.double({ min: 0, max: 0.01, noNaN: true });
    fc.assert(
      fc.property(kappa, kappa, (a, b) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(order.indexOf(meterAnswer(more, 0))).toBeGreaterThanOrEqual(
          order.indexOf(meterAnswer(less, 0)),
        );
        expect(meterAnswer(more, 1e-6 + less)).not.toBe('ask the maker');
      }),
    );
    expect(meterAnswer(8e-4, 30e-4)).toBe('does not count');
    expect(meterAnswer(8e-4, 5e-4)).toBe('counts');
  });

  it('a pipe cut in two holds what it held, and flushes with the same flow', () => {
    const length = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(length, length, length, (bore, first, second) => {
        expect(
          pipesVolume([bore, bore], [first, second]) / pipesVolume([bore], [first + second]),
        ).toBeCloseTo(1, 12);
        expect(flushFlow(bore, 2) / flushFlow(bore, 1)).toBeCloseTo(2, 12);
      }),
    );
  });
});

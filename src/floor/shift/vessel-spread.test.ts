import { describe, expect, it } from 'vitest';
import { vesselSpread } from './vessel-spread.ts';

const quantiles = (draw: ReturnType<typeof vesselSpread>): readonly number[] => {
  if (typeof draw === 'number' || draw.kind !== 'quantiles') throw new Error('no quantiles');
  return draw.quantiles;
};

describe('the fill from a vessel', () => {
  it('reaches from the best row of the hour to the worst, about their mean', () => {
    // evenly from 10 to 12 s: mean and ends are known without any table
    const fills = Array.from({ length: 201 }, (_, i) => 10 + (2 * ((i * 73) % 201)) / 200);
    const found = quantiles(vesselSpread(fills, 10, 10));
    expect(found[0]).toBeCloseTo(10, 12);
    expect(found.at(-1)).toBeCloseTo(12, 12);
    expect(found[16]).toBeCloseTo(11, 12);
  });

  it('keeps the spread of a set where every row is alike, and adds it where they are not', () => {
    const own = { kind: 'quantiles' as const, quantiles: [9.9, 10, 10.1] };
    expect(quantiles(vesselSpread([10, 10, 10], own, 10))[0]).toBeCloseTo(9.9, 12);
    const both = quantiles(vesselSpread([10, 12], own, 10));
    expect(both[0]).toBeCloseTo(9.9, 12);
    expect(both.at(-1)).toBeCloseTo(12.1, 12);
  });

  it('is that of one set where nothing was walked', () => {
    expect(vesselSpread([], 7, 7)).toBe(7);
  });
});

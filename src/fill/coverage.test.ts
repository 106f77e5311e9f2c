import { describe, expect, it } from 'vitest';
import { coverageOf } from './testing/coverage.ts';
import { floorPair } from './testing/floor-pair.ts';
import { otherModelPair } from './testing/other-model.ts';

/**
 * A share of these pairs; `bench/fill-study.ts` runs a thousand. Lanes of one pair share its supply, so a stratum of n pairs
 * is worth about 1.5 n independent intervals: 60 of them leave 3 sigma of 12 % about 90 %.
 */
const pairs = 40;
const least = 0.78;

describe.each(['gravity', 'main', 'pumped'] as const)('trials on a poor %s supply', (source) => {
  it.each([1, 2, 4, 8])('tell what %i lanes will do on the other floor', (lanes) => {
    const found = coverageOf({ source, lanes, bottles: 6 }, lanes > 2 ? pairs / 2 : pairs, 77 + lanes);
    expect(found.volumeInside).toBeGreaterThan(least);
    expect(found.timeInside).toBeGreaterThan(least);
    // 1.3 times Cramer-Rao times Student over normal, and as much again of chance in few pairs for lanes that change places
    expect(found.volumeWidth).toBeLessThan(lanes > 2 ? 1.6 : 1.3);
    expect(found.timeWidth).toBeLessThan(1.3);
  });
});

describe('all strata together', () => {
  it('hold the truth nine times in ten', () => {
    const all = (['gravity', 'main', 'pumped'] as const).map((source) =>
      // the widths are looked at above
      coverageOf({ source, lanes: 2, bottles: 5 }, 100, 4711, floorPair, 0),
    );
    const share = (of: 'volumeInside' | 'timeInside'): number =>
      all.reduce((sum, each) => sum + each[of], 0) / all.length;
    // 300 pairs of two lanes: 3 sigma of 4.5 %
    expect(Math.abs(share('volumeInside') - 0.9)).toBeLessThan(0.045);
    expect(Math.abs(share('timeInside') - 0.9)).toBeLessThan(0.045);
  });
});

describe('a truth of another model', () => {
  it.each(['gravity', 'main', 'pumped'] as const)('lies within the allowances: %s', (source) => {
    const found = coverageOf({ source, lanes: 2, bottles: 6 }, 60, 99, otherModelPair, 0);
    // at least 85 %, less 3 sigma of 60 pairs
    expect(found.volumeInside).toBeGreaterThan(0.85 - 0.12);
    expect(found.timeInside).toBeGreaterThan(0.85 - 0.12);
  });
});

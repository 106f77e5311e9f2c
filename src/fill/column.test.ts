import { describe, expect, it } from 'vitest';
import { columnEffect } from '../hydraulics/column-effect.ts';
import { fillRow } from '../hydraulics/fill-row.ts';
import { startStored } from '../hydraulics/stored.ts';
import { columnPair, columnRow } from './testing/column-pair.ts';
import { coverageOf } from './testing/coverage.ts';
import { floorPair, trueRow } from './testing/floor-pair.ts';
import { randomFrom } from './testing/random.ts';

describe('the liquid in the run while lanes open and close', () => {
  it.each([1, 2, 8])('does to %i lanes what integrating all of it from rest gives', (lanes) => {
    for (const seed of [1, 2, 3]) {
      const { trueHere, trueThere, presets } = floorPair(randomFrom(seed), {
        source: 'gravity',
        lanes,
        bottles: 1,
      });
      for (const floor of [trueHere, trueThere]) {
        const system = {
          ...floor,
          lanes: floor.lanes.map((lane, i) => ({ ...lane, preset: presets[i]! })),
        };
        const row = fillRow(system, startStored(system.source));
        if ('stuck' in row) throw new Error('stuck');
        const effect = columnEffect(system, row)!;
        const steady = trueRow(floor, presets);
        const whole = columnRow(system);
        whole.volumes.forEach((volume, i) => {
          // steps of the first order in both, and a loss that does not quite go with the square of the flow: 4 % of what the
          // column does to eight lanes, which is 7e-3 of a volume
          expect(Math.abs(steady.volumes[i]! + effect.volumes[i]! - volume)).toBeLessThan(3e-4 * volume);
          expect(Math.abs(steady.times[i]! + effect.times[i]! - whole.times[i]!)).toBeLessThan(
            1.5e-3 * whole.times[i]! + 3e-3,
          );
        });
      }
    }
  });

  it('is within the intervals where the book says that the run is stiff', () => {
    const found = coverageOf({ source: 'main', lanes: 2, bottles: 6 }, 30, 71, columnPair, 0);
    // 90 % less 3 sigma of 30 pairs of two lanes; without the column it is 67 %
    expect(found.volumeInside).toBeGreaterThan(0.76);
    expect(found.timeInside).toBeGreaterThan(0.76);
  });
});

import { describe, expect, it } from 'vitest';
import { columnEffect } from '../hydraulics/column-effect.ts';
import { fillRow } from '../hydraulics/fill-row.ts';
import { startStored } from '../hydraulics/stored.ts';
import { openRun } from './column-shares.ts';
import { estimateLanes } from './estimate-lanes.ts';
import { predictOtherFloor } from './predict-other-floor.ts';
import { columnPair, columnRow, openColumnPair, stillPair } from './testing/column-pair.ts';
import { coverageOf } from './testing/coverage.ts';
import { floorPair, trueRow } from './testing/floor-pair.ts';
import { randomFrom } from './testing/random.ts';
import { waveRow } from './testing/wave-pair.ts';
import type { ColumnShare } from './uncertain-floor.ts';

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

  it('does to lanes that are alike, and reach their counts together, what integrating gives', () => {
    const { trueHere, presets } = floorPair(randomFrom(2), { source: 'main', lanes: 1, bottles: 1 });
    const lanes = Array.from({ length: 4 }, () => ({ ...trueHere.lanes[0]!, preset: presets[0]! }));
    const system = { ...trueHere, lanes };
    const row = fillRow(system, startStored(system.source));
    if ('stuck' in row) throw new Error('stuck');
    const effect = columnEffect(system, row)!;
    const steady = trueRow(
      system,
      lanes.map(({ preset }) => preset),
    );
    columnRow(system).volumes.forEach((volume, i) => {
      expect(Math.abs(steady.volumes[i]! + effect.volumes[i]! - volume)).toBeLessThan(3e-4 * volume);
      expect(Math.abs(effect.times[i]! - effect.times[0]!)).toBeLessThan(1e-9);
    });
  });

  it.each([
    // 90 % less 3 sigma of 15 pairs of two lanes
    ['the book says that the run is stiff, and it is', columnPair],
    ['nobody says it, and it is', openColumnPair],
    ['nobody says it, and there is no column', stillPair],
  ] as const)('is within the intervals where %s', (_, pairOf) => {
    const found = coverageOf({ source: 'main', lanes: 2, bottles: 6 }, 15, 71, pairOf, 0);
    expect(found.volumeInside).toBeGreaterThan(0.71);
    expect(found.timeInside).toBeGreaterThan(0.71);
  });

  it('is what waves do in a wall that hardly gives', () => {
    const { trueHere, presets } = floorPair(randomFrom(1), { source: 'gravity', lanes: 2, bottles: 1 });
    const system = {
      ...trueHere,
      lanes: trueHere.lanes.map((lane, i) => ({ ...lane, preset: presets[i]! })),
    };
    const [moved, waved] = [columnRow(system), waveRow(system, 1400)];
    // the waves' run loses with the square of its flow, and they are stepped by a millisecond
    waved.volumes.forEach((volume, i) => {
      expect(Math.abs(volume - moved.volumes[i]!)).toBeLessThan(3e-4 * volume);
    });
  });

  it('is worth asking for where nobody says it', () => {
    const pair = openColumnPair(randomFrom(3), { source: 'main', lanes: 2, bottles: 6 });
    const predicted = (here: ColumnShare, there: ColumnShare) => {
      const answer = estimateLanes({ floor: { ...pair.here, column: here }, trials: pair.trials });
      if (answer.kind !== 'estimate') throw new Error('refused');
      const floor = { ...pair.there, column: there };
      return predictOtherFloor({ estimate: answer.estimate, floor, presets: pair.presets })!;
    };
    const known: ColumnShare = { share: 0.5, deviation: 0 };
    const open = predicted(openRun, openRun);
    const narrower = (other: typeof open): number =>
      Math.max(...open.lanes.map(({ volume }, i) => 1 - other.lanes[i]!.volume.deviation / volume.deviation));
    // what is said to be gained by knowing a run is gained where it is known; the scatter is estimated anew with it
    expect(Math.abs(narrower(predicted(known, openRun)) - open.ofRuns.here)).toBeLessThan(0.03);
    expect(Math.abs(narrower(predicted(openRun, known)) - open.ofRuns.there)).toBeLessThan(0.03);
    expect(open.ofRuns.here).toBeGreaterThan(0.1);
    expect(predicted(known, known).ofRuns).toEqual({ here: 0, there: 0 });
  });
});

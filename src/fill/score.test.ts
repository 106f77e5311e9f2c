import { describe, expect, it } from 'vitest';
import { estimateLanes } from './estimate-lanes.ts';
import { predictOtherFloor } from './predict-other-floor.ts';
import { scorePrediction } from './score.ts';
import { floorPair, trueRow } from './testing/floor-pair.ts';
import { randomFrom } from './testing/random.ts';
import type { FillTrial } from './trial.ts';

/** A prediction and bottles filled where it speaks of, `off` away from the truth. */
const moved = (seed: number, off = 0) => {
  const random = randomFrom(seed);
  const pair = floorPair(random, { source: 'main', lanes: 2, bottles: 6 });
  const answer = estimateLanes({ floor: pair.here, trials: pair.trials });
  if (answer.kind === 'refused') throw new Error('refused');
  const prediction = predictOtherFloor({
    estimate: answer.estimate,
    floor: pair.there,
    presets: pair.presets,
  })!;
  const truth = trueRow(pair.trueThere, pair.presets);
  const bottles = 5;
  const trials = pair.presets.flatMap((preset, lane) =>
    Array.from(
      { length: bottles },
      (_, i): FillTrial => ({
        lane: pair.trueThere.lanes[lane]!.tag,
        preset,
        volume: truth.volumes[lane]! + off + pair.ownSpread * random.normal(),
        time: truth.times[lane]! + pair.watch * random.normal(),
        overflow: 'none',
        row: `${i}`,
      }),
    ),
  );
  return { prediction, trials };
};

describe('a prediction against the trials at the site', () => {
  it('holds nine in ten over many moves', () => {
    let inside = 0;
    let of = 0;
    for (let seed = 0; seed < 60; seed++) {
      const { prediction, trials } = moved(900 + seed);
      const score = scorePrediction(prediction, trials);
      inside += score.inside;
      of += score.of;
      expect(score.apart).toEqual([]);
    }
    // 60 moves of two lanes, of which each shares its supply: 3 sigma of 9 %
    expect(of).toBe(240);
    expect(Math.abs(inside / of - 0.9)).toBeLessThan(0.09);
  });

  it('says that it was wrong where the site gets 3 % more', () => {
    const { prediction, trials } = moved(7, 0.03 * 1e-3);
    const { scores } = scorePrediction(prediction, trials);
    for (const { of, inside, standard } of scores.filter((each) => each.of === 'volume')) {
      expect([of, inside]).toEqual(['volume', false]);
      expect(standard).toBeGreaterThan(3);
    }
  });

  it('leaves bottles apart that it does not speak of', () => {
    const { prediction, trials } = moved(8);
    const odd: readonly FillTrial[] = [
      { ...trials[0]!, preset: trials[0]!.preset + 5 },
      { ...trials[1]!, afterStop: true },
    ];
    const score = scorePrediction(prediction, [...odd, ...trials]);
    expect(score.apart).toEqual([0, 1]);
    expect(score.scores[0]!.bottles).toBe(5);
  });

  it('has been tried on no real move yet', () => {
    expect(moved(9).prediction.realMoves).toBe(0);
  });
});

import { describe, expect, it } from 'vitest';
import { estimateLanes } from './estimate-lanes.ts';
import { predictOtherFloor } from './predict-other-floor.ts';
import { floorPair, trueRow } from './testing/floor-pair.ts';
import { randomFrom } from './testing/random.ts';

/** Half a millilitre in every bottle of a series, whoever weighs how many. */
const calibration = 5e-4 * 1e-3;

/** Trials of a lane by a balance that is off by `off`, and what its calibration is trusted to. */
const weighed = (seed: number, bottles: number, off: number, common: number | undefined) => {
  const pair = floorPair(randomFrom(seed), { source: 'main', lanes: 1, bottles });
  const trials = pair.trials.map((trial) => ({
    ...trial,
    volume: trial.volume! + off,
    ...(common === undefined ? {} : { commonDeviation: common }),
  }));
  const answer = estimateLanes({ floor: pair.here, trials });
  if (answer.kind === 'refused') throw new Error('refused');
  return { pair, estimate: answer.estimate };
};

/** Contents that are foretold on a floor for the count of the longer trials, of which the trials tell most. */
const foretold = ({ pair, estimate }: ReturnType<typeof weighed>, floor = pair.here) => {
  const preset = pair.trials.at(-1)!.preset;
  return predictOtherFloor({ estimate, floor, presets: [preset] })!.lanes[0]!.volume;
};

describe('an error that all volumes share', () => {
  it('stays however many bottles are weighed: JCGM 100:2008, F.1.2.3, fully correlated inputs', () => {
    const alone = foretold(weighed(3, 400, 0, undefined));
    const shared = foretold(weighed(3, 400, 0, calibration));
    expect(alone.deviation).toBeLessThan(0.5 * calibration);
    // the variance of the mean is s^2/n + u_c^2
    expect(shared.deviation ** 2 - alone.deviation ** 2).toBeCloseTo(calibration ** 2, 15);
    expect(shared.deviation / Math.hypot(alone.deviation, calibration)).toBeCloseTo(1, 2);
  });

  it('moves the mean by as much as the covariance says', () => {
    const moved = foretold(weighed(3, 50, calibration, undefined)).value;
    const still = foretold(weighed(3, 50, 0, undefined)).value;
    expect((moved - still) / calibration).toBeCloseTo(1, 2);
  });

  it('leaves nine of ten contents on the other floor within the interval, and far fewer where it counts as each bottle’s own', () => {
    const random = randomFrom(8);
    const off = 4 * calibration;
    const inside = { shared: 0, own: 0 };
    const pairs = 60;
    for (let seed = 1; seed <= pairs; seed++) {
      const by = off * random.normal();
      for (const how of ['shared', 'own'] as const) {
        const series = weighed(seed, 12, by, how === 'shared' ? off : undefined);
        const { pair, estimate } = series;
        const found = predictOtherFloor({ estimate, floor: pair.there, presets: pair.presets })!;
        const truth = trueRow(pair.trueThere, pair.presets).volumes[0]!;
        const { lower, upper } = found.lanes[0]!.volume;
        if (truth >= lower && truth <= upper) inside[how]++;
      }
    }
    // 90 % less 3 sigma of 60
    expect(inside.shared / pairs).toBeGreaterThan(0.78);
    expect(inside.own).toBeLessThan(inside.shared);
  });
});

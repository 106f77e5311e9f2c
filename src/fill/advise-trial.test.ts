import { describe, expect, it } from 'vitest';
import { adviseTrial } from './advise-trial.ts';
import { estimateLanes, type LanesEstimate } from './estimate-lanes.ts';
import { predictOtherFloor } from './predict-other-floor.ts';
import { floorPair } from './testing/floor-pair.ts';
import { randomFrom } from './testing/random.ts';
import type { FillTrial } from './trial.ts';

const pair = floorPair(randomFrom(31), { source: 'gravity', lanes: 2, bottles: 6 });
const { here, there, presets, level } = pair;
const estimated = (trials: readonly FillTrial[]): LanesEstimate => {
  const answer = estimateLanes({ floor: here, trials });
  if (answer.kind === 'refused') throw new Error('refused');
  return answer.estimate;
};
const advised = (estimate: LanesEstimate) =>
  adviseTrial({ estimate, floor: there, presets, capacity: level });

describe('the next trial', () => {
  it('is of the lane that nobody tried', () => {
    const one = estimated(pair.trials.filter(({ lane }) => lane === '-Y1'));
    expect(advised(one)[0]!.lane).toBe('-Y2');
  });

  it('is at another preset where all were at one', () => {
    const high = Math.max(...pair.trials.map(({ preset }) => preset));
    const one = estimated(pair.trials.filter(({ preset }) => preset === high));
    expect(Math.abs(advised(one)[0]!.preset / high - 1)).toBeGreaterThan(0.2);
  });

  it('wants a larger vessel where it would run over', () => {
    const estimate = estimated(pair.trials);
    for (const { preset, throttled, largeVessel } of advised(estimate)) {
      if (throttled) continue;
      if (preset > 1.2 * presets[0]!) expect(largeVessel).toBe(true);
      if (preset < 0.8 * presets[0]!) expect(largeVessel).toBe(false);
    }
  });

  it('narrows what it was said to narrow, once it is made', () => {
    const few = pair.trials.filter((_, i) => i % 3 !== 2);
    const estimate = estimated(few);
    const advice = advised(estimate).find(
      ({ throttled, lane, preset }) => !throttled && lane === '-Y1' && preset < presets[0]!,
    )!;
    const { fit, model } = estimate.basis;
    // bottles that read just what the estimate says, so that nothing but the knowledge changes
    const like = few.filter(({ lane }) => lane === '-Y1').at(-1)!;
    const at = (trials: readonly FillTrial[]) =>
      predictOtherFloor({ estimate: estimated(trials), floor: there, presets })!.lanes[0]!.volume.deviation;
    const own = few.filter(({ lane, preset }) => lane === '-Y1' && preset === like.preset);
    // five of each lane, the column in the run, the supply
    expect(fit.unknowns.length).toBe(5 * model.scales.length + 2);
    const answerAt = estimate.basis.readings.findIndex(({ setup }) => setup.presets[0] === like.preset);
    const pulse = estimate.lanes[0]!.pulse.value;
    const fitted = fit.answers[answerAt]!;
    const volume = fitted.volumes[0]! + (advice.preset - like.preset) * pulse;
    const time = fitted.times[0]! + ((advice.preset - like.preset) * pulse) / fitted.flows[0]!;
    const made = Array.from({ length: advice.bottles }, (_, i): FillTrial => {
      // a scatter like that of the others, so that the spread stays what it was
      const by = [-1, 0, 1][i]! * estimate.volumeSpread.value;
      return { ...own[0]!, preset: advice.preset, volume: volume + by, time, row: `next ${i}` };
    });
    const before = at(few);
    const after = at([...few, ...made]);
    expect(before / advice.volumeNow).toBeCloseTo(1, 6);
    expect(after).toBeLessThan(before);
    // the spread that is estimated anew takes its part in the difference
    expect(
      (after / advice.volumeThen) *
        (estimate.volumeSpread.value / estimated([...few, ...made]).volumeSpread.value),
    ).toBeCloseTo(1, 1);
  });
});

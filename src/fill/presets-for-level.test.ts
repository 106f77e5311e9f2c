import { describe, expect, it } from 'vitest';
import { binomialUpperTail } from '../statistics/binomial.ts';
import { normalQuantile } from '../statistics/normal.ts';
import { studentQuantile } from '../statistics/student.ts';
import { estimateLanes, type LanesEstimate } from './estimate-lanes.ts';
import { meanOverflow } from './mean-overflow.ts';
import { type Capacity, presetsForLevel } from './presets-for-level.ts';
import { presetsForVolume } from './presets-for-volume.ts';
import { floorPair, trueRow } from './testing/floor-pair.ts';
import { leastWidths } from './testing/least-width.ts';
import { randomFrom } from './testing/random.ts';

const estimateOf = (pair: ReturnType<typeof floorPair>): LanesEstimate => {
  const answer = estimateLanes({ floor: pair.here, trials: pair.trials });
  if (answer.kind === 'refused') throw new Error('refused');
  return answer.estimate;
};

const capacityOf = (level: number): Capacity => ({
  mean: level,
  deviation: 0.002 * level,
  meanDeviation: 0,
  dof: Number.POSITIVE_INFINITY,
});

describe('presets from a dozen bottles a lane', () => {
  const goal = 0.995;
  const run = (where: 'here' | 'there') => {
    let bottles = 0;
    let short = 0;
    let given = 0;
    let best = 0;
    const chance = randomFrom(8);
    for (const source of ['gravity', 'main', 'pumped'] as const) {
      const random = randomFrom(6000 + source.length);
      for (let i = 0; i < 40; i++) {
        const pair = floorPair(random, { source, lanes: 2, bottles: 6 });
        const estimate = estimateOf(pair);
        const capacity = capacityOf(pair.level);
        const floor = where === 'here' ? pair.here : pair.there;
        const presets = presetsForLevel({ estimate, floor, capacity, goal });
        const truth = trueRow(
          where === 'here' ? pair.trueHere : pair.trueThere,
          presets!.lanes.map(({ preset }) => preset),
        );
        const single = Math.hypot(pair.ownSpread, capacity.deviation);
        const least = where === 'there' ? leastWidths(pair).volumes : [];
        truth.volumes.forEach((volume, lane) => {
          // bottles of each lane, drawn by chance: they cost nothing beside the fit
          for (let drawn = 0; drawn < 3; drawn++) {
            bottles++;
            if (volume - pair.level + single * chance.normal() < 0) short++;
          }
          given += volume - pair.level;
          // whoever knew the scatter, and had to judge the mean from the same bottles, could not give less
          const mean = least[lane] ?? 0;
          const known = studentQuantile(goal, estimate.volumeSpread.dof) / normalQuantile(goal);
          best += normalQuantile(goal) * Math.hypot(single, mean * known);
        });
      }
    }
    return { bottles, short, ratio: given / best };
  };

  it.each(['here', 'there'] as const)('leave no more bottles short than was promised: %s', (where) => {
    const { bottles, short, ratio } = run(where);
    expect(binomialUpperTail(short, bottles, 1 - goal)).toBeGreaterThan(0.01);
    expect(ratio).toBeLessThan(1.2);
  });
});

describe('presets for a level', () => {
  const pair = floorPair(randomFrom(17), { source: 'gravity', lanes: 4, bottles: 8 });
  const estimate = estimateOf(pair);
  const capacity = capacityOf(pair.level);
  const input = { estimate, floor: pair.here, capacity };

  it('are the smallest that keep the promise', () => {
    const presets = presetsForLevel(input)!;
    for (const lane of presets.lanes) expect(lane.reached).toBeGreaterThanOrEqual(0.995);
    const slack = Math.min(...presets.lanes.map(({ reached }) => reached));
    // a count is a fifth of a spread or less: none lies far beyond
    expect(slack).toBeLessThan(0.998);
  });

  it('rise with the goal and with the confidence that is asked for', () => {
    const sum = (more: Partial<Parameters<typeof presetsForLevel>[0]>): number =>
      presetsForLevel({ ...input, ...more })!.lanes.reduce((all, { preset }) => all + preset, 0);
    const usual = sum({});
    expect(sum({ goal: 0.9 })).toBeLessThan(usual);
    expect(sum({ goal: 0.9999 })).toBeGreaterThan(usual);
    expect(sum({ rule: { kind: 'tolerance', confidence: 0.95 } })).toBeGreaterThan(usual);
  });

  it('cost more as one common count', () => {
    const presets = presetsForLevel({ ...input, shift: 1000 })!;
    expect(presets.common.preset).toBe(Math.max(...presets.lanes.map(({ preset }) => preset)));
    expect(presets.common.price).toBeGreaterThanOrEqual(0);
    expect(presets.common.shiftPrice).toBeCloseTo(1000 * presets.common.price, 12);
    for (const lane of presets.common.lanes) expect(lane.reached).toBeGreaterThan(0.99);
  });
});

describe('presets for a volume', () => {
  const pair = floorPair(randomFrom(19), { source: 'main', lanes: 2, bottles: 10 });
  const estimate = estimateOf(pair);
  const of = (deficiency: number) =>
    presetsForVolume({ estimate, floor: pair.here, label: 0.8 * pair.level, deficiency })!;

  it('keep the mean above the label where the lanes scatter little', () => {
    for (const lane of of(0.03 * pair.level)) {
      expect(lane.limit).toBe('mean');
      expect(lane.wanted).toBe(0.8 * pair.level);
      expect(lane.giveaway).toBeGreaterThan(0);
      expect(lane.giveaway).toBeLessThan(0.01 * pair.level);
    }
  });

  it('are held by the bottles below once the deficiency is smaller than their scatter', () => {
    const narrow = of(estimate.ownSpread.value);
    expect(narrow[0]!.limit).not.toBe('mean');
    expect(narrow[0]!.preset).toBeGreaterThan(of(0.03 * pair.level)[0]!.preset);
  });
});

it('the mean of what runs over is phi(0) spreads where the mean just fills the bottle', () => {
  expect(meanOverflow(0, 2)).toBeCloseTo(2 / Math.sqrt(2 * Math.PI), 12);
  expect(meanOverflow(5, 0)).toBe(5);
});

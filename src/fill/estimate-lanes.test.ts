import { describe, expect, it } from 'vitest';
import { oracleRow } from '../../tests/physics/oracle.ts';
import { fillRow } from '../hydraulics/fill-row.ts';
import { manifoldBalance } from '../hydraulics/manifold-balance.ts';
import { runInertia } from '../hydraulics/run-inertia.ts';
import { startStored } from '../hydraulics/stored.ts';
import { leastSquares } from '../statistics/least-squares.ts';
import { estimateLanes, type LanesEstimate } from './estimate-lanes.ts';
import { predictOtherFloor } from './predict-other-floor.ts';
import { withinOf } from './student-sum.ts';
import { floorPair, trueRow } from './testing/floor-pair.ts';
import { randomFrom } from './testing/random.ts';
import type { FillTrial } from './trial.ts';
import type { UncertainFloor } from './uncertain-floor.ts';

const estimated = (floor: UncertainFloor, trials: readonly FillTrial[], capacity?: number): LanesEstimate => {
  const answer = estimateLanes({ floor, trials, ...(capacity === undefined ? {} : { capacity }) });
  if (answer.kind === 'refused') throw new Error(answer.problems.map(({ code }) => code).join());
  return answer.estimate;
};

const codes = ({ doubts }: LanesEstimate): readonly string[] => doubts.map(({ code }) => code);

const pair = floorPair(randomFrom(11), { source: 'gravity', lanes: 2, bottles: 6 });
const { here, there, trials, presets, level } = pair;

describe('one lane alone', () => {
  const alone = floorPair(randomFrom(5), { source: 'main', lanes: 1, bottles: 12 });

  it('gets the slope and the intercept of the straight line that least squares lay through its bottles', () => {
    const estimate = estimated(alone.here, alone.trials);
    const lane = estimate.lanes[0]!;
    const line = leastSquares(
      alone.trials.map(({ preset }) => [1, preset]),
      alone.trials.map(({ volume }) => volume!),
    );
    const [intercept, slope] = line.coefficients as [number, number];
    const flow = estimate.basis.fit.answers[0]!.flows[0]!;
    const phase = alone.here.system.lanes[0]!.phase * alone.here.system.lanes[0]!.pulses;
    // the wide ranges beforehand weigh less than a hundredth of the bottles
    expect(lane.pulse.value / slope).toBeCloseTo(1, 4);
    const after = lane.afterRun.value * flow + lane.drip.value - phase * lane.pulse.value;
    expect(Math.abs(after - intercept)).toBeLessThan(
      0.2 * Math.sqrt(line.residualVariance! * line.covarianceUnit[0]![0]!),
    );
    expect(estimate.volumeSpread.value / Math.sqrt(line.residualVariance!)).toBeCloseTo(1, 1);
    expect(estimate.volumeSpread.dof).toBeCloseTo(line.dof, 0);
    expect(lane.spread!.value / Math.sqrt(line.residualVariance!)).toBeCloseTo(1, 1);
    expect(lane.spread!.dof).toBeCloseTo(line.dof, 0);
  });

  it('has a scatter of its own beside a lane whose bottles differ three times as much', () => {
    const two = floorPair(randomFrom(8), { source: 'gravity', lanes: 2, bottles: 20 });
    // about the mean of each lane and count every miss of one lane is made three times as large
    const means = new Map<string, { sum: number; n: number }>();
    const key = ({ lane, preset }: FillTrial): string => `${lane} ${preset}`;
    for (const trial of two.trials) {
      const { sum, n } = means.get(key(trial)) ?? { sum: 0, n: 0 };
      means.set(key(trial), { sum: sum + trial.volume!, n: n + 1 });
    }
    const wider = two.trials.map((trial): FillTrial => {
      const { sum, n } = means.get(key(trial))!;
      const mean = sum / n;
      return trial.lane === '-Y2' ? { ...trial, volume: mean + 3 * (trial.volume! - mean) } : trial;
    });
    const [own, large] = estimated(two.here, wider).lanes.map(({ spread }) => spread!.value);
    const truth = Math.hypot(two.ownSpread, two.weighing);
    // 38 degrees of freedom: 3 sigma of 34 %
    expect(Math.abs(own! / truth - 1)).toBeLessThan(0.34);
    expect(Math.abs(large! / truth / 3 - 1)).toBeLessThan(0.34);
  });
});

describe('bottles whose flows come from a second solution of the physics', () => {
  it('give the lanes back that filled them', () => {
    const rows = floorPair(randomFrom(21), { source: 'pumped', lanes: 4, bottles: 8 }, (system) => {
      const { drawn, vessel, pumping } = startStored(system.source);
      const row = oracleRow(system, { drawn, vessel, pumping });
      return {
        fillTime: 0,
        drawTime: row.drawTime,
        drawn: 0,
        stored: { drawn, vessel, pumping },
        moments: [],
        lanes: row.lanes.map((lane) => ({ ...lane, lane: '', flowFree: 0, flowCovered: 0 })),
      };
    });
    const estimate = estimated(rows.here, rows.trials);
    estimate.lanes.forEach((lane, i) => {
      const truth = rows.trueHere.lanes[i]!;
      // four lanes with three values each: one in two thousand further out than 3.5 deviations
      const standard = (value: number, of: { value: number; deviation: number }): number =>
        Math.abs(of.value - value) / of.deviation;
      expect(standard(truth.pulses, lane.pulses)).toBeLessThan(3.5);
      expect(standard(truth.delay + 0.5 * truth.closing, lane.afterRun)).toBeLessThan(3.5);
      expect(standard(truth.kv, lane.kv)).toBeLessThan(3.5);
    });
  });
});

describe('bottles that overflowed', () => {
  it('leave the estimate where it would be without a brim; dropped or taken as they are they bend it', () => {
    const misses = { kept: 0, dropped: 0, naive: 0 };
    const runs = 40;
    for (let run = 0; run < runs; run++) {
      const each = floorPair(randomFrom(300 + run), { source: 'gravity', lanes: 1, bottles: 10 });
      // the brim cuts through the upper preset's scatter
      const high = each.trials.filter(({ preset }) => preset === each.trials.at(-1)!.preset);
      const brim = high.reduce((sum, { volume }) => sum + volume!, 0) / high.length;
      const cut = each.trials.map(
        (trial): FillTrial => (trial.volume! > brim ? { ...trial, volume: brim, overflow: 'trace' } : trial),
      );
      const whole = estimated(each.here, each.trials);
      const at = (trialsOf: readonly FillTrial[]): number => {
        const found = estimated(each.here, trialsOf).basis.fit.answers.map(({ volumes }) => volumes[0]!);
        const truth = whole.basis.fit.answers.map(({ volumes }) => volumes[0]!);
        return (Math.max(...found) - Math.max(...truth)) / each.ownSpread / runs;
      };
      misses.kept += at(cut);
      misses.dropped += at(cut.filter(({ overflow }) => overflow === 'none'));
      misses.naive += at(cut.map((trial) => ({ ...trial, overflow: 'none' as const })));
    }
    // in spreads of a bottle; half of the bottles cut off move a mean by 0.8 when dropped, 0.4 when taken as they are
    expect(Math.abs(misses.kept)).toBeLessThan(0.15);
    expect(misses.dropped).toBeLessThan(-0.5);
    expect(misses.naive).toBeLessThan(-0.25);
  });

  it('all of them: the interval is as wide as what was known before, and it is said', () => {
    const estimate = estimated(
      here,
      trials.map((trial) => ({ ...trial, overflow: 'stream' as const, volume: 0.4 * level })),
    );
    expect(codes(estimate)).toContain('only-overflowed');
    const volume = predictOtherFloor({ estimate, floor: there, presets })!.lanes[0]!.volume;
    expect(volume.upper - volume.lower).toBeGreaterThan(0.1 * level);
  });
});

describe('trials that tell little', () => {
  const widthOf = (estimate: LanesEstimate, lane = 0): number => {
    const { upper, lower } = predictOtherFloor({ estimate, floor: there, presets })!.lanes[lane]!.volume;
    return upper - lower;
  };
  const whole = estimated(here, trials);

  it('at one preset do not part the pulse from the after-run: said, and wide', () => {
    const one = estimated(
      here,
      trials.filter(({ preset }) => preset === trials[0]!.preset),
    );
    expect(codes(one)).toContain('one-preset');
    expect(widthOf(one)).toBeGreaterThan(5 * widthOf(whole));
  });

  it('without times do not tell the flow: said, and the time is wide', () => {
    const untimed = estimated(
      here,
      trials.map(({ time: _, ...trial }) => trial),
    );
    expect(codes(untimed)).toContain('no-times');
    const { time } = predictOtherFloor({ estimate: untimed, floor: there, presets })!.lanes[0]!;
    expect(time.upper / time.lower).toBeGreaterThan(1.5);
  });

  it('two like bottles are no proof of a lane without spread', () => {
    const two = estimated(here, [trials[0]!, { ...trials[0]!, row: 'again' }]);
    expect(codes(two)).toEqual(expect.arrayContaining(['few-bottles', 'one-preset', 'no-trials']));
    expect(widthOf(two)).toBeGreaterThan(5 * widthOf(whole));
    expect(two.volumeSpread.value).toBeGreaterThan(1e-4 * level);
  });

  it('of one lane leave the other as wide as the book', () => {
    const one = estimated(
      here,
      trials.filter(({ lane }) => lane === '-Y1'),
    );
    expect(widthOf(one, 1)).toBeGreaterThan(10 * widthOf(whole, 1));
    expect(codes(one)).toContain('lanes-supposed');
  });
});

describe('what else was seen', () => {
  const { trueHere } = pair;
  const random = randomFrom(77);
  /** A row of both lanes, the first throttled to a third, with the gauge on the manifold read. */
  const throttledRow = (row: string): readonly FillTrial[] => {
    const preset = presets[0]!;
    const lanes = trueHere.lanes.map((lane, i) => {
      const kv = lane.kv * (i === 0 ? 0.3 : 1);
      return { ...lane, preset, changeOver: preset, kv, kvSlow: kv };
    });
    const system = { ...trueHere, lanes };
    const filled = fillRow(system, startStored(system.source));
    if ('stuck' in filled) throw new Error('stuck');
    const { pressure, flow } = manifoldBalance(system);
    const lag = Math.LN2 * runInertia(system, flow).timeConstant;
    return filled.lanes.map((lane, i) => ({
      lane: lanes[i]!.tag,
      preset,
      volume: lane.volume + pair.ownSpread * random.normal(),
      time: lane.fillTime + lag + pair.watch * random.normal(),
      timeDeviation: pair.watch,
      overflow: 'none' as const,
      row,
      pressure: pressure + 50 * random.normal(),
      pressureDeviation: 50,
      ...(i === 0 ? { throttled: true } : {}),
    }));
  };
  const rows = ['a', 'b', 'c', 'd', 'e', 'f'].flatMap(throttledRow);

  it('a throttled lane tells of another flow, and parts the after-run from the drip', () => {
    const plain = estimated(here, trials);
    const both = estimated(here, [...trials, ...rows]);
    const oneFlow = (of: LanesEstimate): readonly string[] =>
      of.doubts.filter(({ code }) => code === 'one-flow').flatMap(({ lanes }) => lanes);
    expect(oneFlow(plain)).toEqual(['-Y1', '-Y2']);
    expect(oneFlow(both)).toEqual(['-Y2']);
    expect(both.lanes[0]!.afterRun.deviation).toBeLessThan(plain.lanes[0]!.afterRun.deviation);
  });

  it('a gauge on the manifold tells the supply, and with it the valve coefficients', () => {
    const ungauged = rows.map(({ pressure: _, pressureDeviation: __, ...trial }) => trial);
    const without = estimated(here, [...trials, ...ungauged]);
    const gauged = estimated(here, [...trials, ...rows]);
    gauged.lanes.forEach((lane, i) => {
      expect(lane.kv.deviation).toBeLessThan(0.8 * without.lanes[i]!.kv.deviation);
      expect(Math.abs(lane.kv.value - trueHere.lanes[i]!.kv) / lane.kv.deviation).toBeLessThan(3.5);
    });
  });
});

describe('trials that can not be right', () => {
  it('are refused one by one, and the others stand', () => {
    const estimate = estimated(here, [
      { ...trials[0]!, volume: 0 },
      { ...trials[1]!, time: -1 },
      { ...trials[2]!, lane: '-Y9' },
      { ...trials[3]!, preset: 0 },
      ...trials.slice(4),
    ]);
    expect(estimate.problems.map(({ code, trial }) => `${trial} ${code}`)).toEqual([
      '0 VOLUME_NOT_POSITIVE',
      '1 TIME_NOT_POSITIVE',
      '2 LANE_UNKNOWN',
      '3 PRESET_NOT_POSITIVE',
    ]);
  });

  it.each([
    ['nothing', []],
    ['empty bottles', trials.map((trial) => ({ ...trial, volume: 0 }))],
    ['presets of 1', trials.map((trial) => ({ ...trial, preset: 1 }))],
  ])('%s is no ground for an estimate', (_, list) => {
    const answer = estimateLanes({ floor: here, trials: list });
    expect(answer.kind).toBe('refused');
  });

  it('a preset of 1 among others is kept apart', () => {
    const estimate = estimated(here, [{ lane: '-Y1', preset: 1, volume: 2e-5, overflow: 'none' }, ...trials]);
    expect(estimate.apart).toEqual([{ trial: 0, why: 'too-short' }]);
    expect(estimate.lanes[0]!.trials).toBe(trials.length / 2);
  });

  it('a bottle 30 mL out is named and kept', () => {
    const estimate = estimated(
      here,
      trials.map((trial, i) => (i === 3 ? { ...trial, volume: trial.volume! + 3e-5 } : trial)),
    );
    expect(estimate.doubts).toContainEqual({ code: 'outlier', lanes: ['-Y2'], trials: [3] });
    expect(estimate.residuals.filter(({ of }) => of === 'volume')).toHaveLength(trials.length);
  });

  it('an after-run below nothing is said, and what else may take it from each bottle is left open', () => {
    const lost = 6e-5;
    const estimate = estimated(
      here,
      trials.map((trial) => ({ ...trial, volume: trial.volume! - lost })),
    );
    expect(codes(estimate)).toContain('after-run-negative');
    const truth = trueRow(pair.trueThere, presets).volumes;
    const whole = estimated(here, trials);
    predictOtherFloor({ estimate, floor: there, presets })!.lanes.forEach(({ volume }, i) => {
      // a tare that is wrong takes there what it takes here
      expect(volume.lower).toBeLessThan(truth[i]! - lost);
      expect(volume.upper).toBeGreaterThan(truth[i]! - lost);
      expect(estimate.lanes[i]!.afterRun.deviation).toBeGreaterThan(3 * whole.lanes[i]!.afterRun.deviation);
    });
  });

  it('all lanes told in each other’s place are found out, and each interval reaches to the others', () => {
    const four = floorPair(randomFrom(61), { source: 'main', lanes: 4, bottles: 6 });
    const factors = [1, 1.06, 0.94, 1.12];
    const told: UncertainFloor = {
      ...four.here,
      system: {
        ...four.here.system,
        // the book knows its lanes well
        lanes: four.trueHere.lanes.map((lane, i) => ({ ...lane, pulses: lane.pulses * factors[i]! })),
      },
    };
    const right = four.trials.map((trial) => {
      const factor = factors[Number(trial.lane.slice(2)) - 1]!;
      return { ...trial, volume: trial.volume! / factor };
    });
    const slipped = right.map((trial) => ({ ...trial, lane: `-Y${5 - Number(trial.lane.slice(2))}` }));
    const good = estimated(told, right);
    expect(codes(good)).not.toContain('lanes-swapped');
    const estimate = estimated(told, slipped);
    expect(estimate.doubts).toContainEqual({
      code: 'lanes-swapped',
      lanes: ['-Y1', '-Y2', '-Y3', '-Y4'],
      trials: [],
    });
    estimate.lanes.forEach(({ pulses }, i) => {
      const { lower, upper } = withinOf(pulses, 0.9);
      expect(lower).toBeLessThan(good.lanes[i]!.pulses.value);
      expect(upper).toBeGreaterThan(good.lanes[i]!.pulses.value);
    });
  });

  it('two bottles of a row that were exchanged are found out', () => {
    const unlike: UncertainFloor = {
      ...here,
      system: {
        ...here.system,
        lanes: here.system.lanes.map((lane, i) => ({ ...lane, pulses: lane.pulses * (1 + 0.05 * i) })),
      },
    };
    const moved = trials.map((trial) =>
      trial.lane === '-Y2' ? { ...trial, volume: trial.volume! * 0.96 } : trial,
    );
    const { row } = trials[0]!;
    const slip = moved.map((trial) =>
      trial.row === row ? { ...trial, lane: trial.lane === '-Y1' ? '-Y2' : '-Y1' } : trial,
    );
    expect(codes(estimated(unlike, moved))).not.toContain('bottles-swapped');
    expect(codes(estimated(unlike, slip))).toContain('bottles-swapped');
    const all = moved.map((trial) => ({ ...trial, lane: trial.lane === '-Y1' ? '-Y2' : '-Y1' }));
    expect(estimated(unlike, all).doubts).toContainEqual({
      code: 'lanes-swapped',
      lanes: ['-Y1', '-Y2'],
      trials: [],
    });
  });

  it('a first bottle after a stop is kept apart with what it missed', () => {
    const stopped: FillTrial = {
      ...trials[0]!,
      afterStop: true,
      row: 'stop',
      volume: trials[0]!.volume! - 2e-5,
    };
    const estimate = estimated(here, [...trials, stopped]);
    expect(estimate.apart).toHaveLength(1);
    expect(estimate.apart[0]!.miss! * 1e6).toBeLessThan(-12);
  });
});

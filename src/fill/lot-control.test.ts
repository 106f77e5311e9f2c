import { describe, expect, it } from 'vitest';
import { lotControlText } from './lot-control.text.ts';
import { type RunBottle, runControl } from './lot-control.ts';

const millilitres = (list: readonly number[], lane?: string): readonly RunBottle[] =>
  list.map((each) => ({ volume: each * 1e-6, ...(lane === undefined ? {} : { lane }) }));

/** NIST StRD SiRstv, five instruments of five readings (read): here five lanes. */
const siRstv = [
  [196.3052, 196.124, 196.189, 196.2569, 196.3403],
  [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
  [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
  [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
  [196.2119, 196.1051, 196.185, 196.0052, 196.209],
];
/** NIST/SEMATECH e-Handbook 6.3.2.3 (read second hand): a shift upwards from group 13 on. */
const shifted = [
  324.925, 324.675, 324.725, 324.35, 325.35, 325.225, 324.125, 324.525, 325.225, 324.6, 324.625, 325.15,
  328.325, 327.25, 327.825, 328.5, 326.675, 327.775, 326.875, 328.35,
];
/** NIST/SEMATECH e-Handbook 6.3.2.4 (read second hand): no signal. */
const steady = [
  52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6,
  52.1,
];
/** Uneven, but about a mean that stays. */
const uneven = [502, 501.4, 502.5, 501.8, 502.2, 501.6, 502.4, 501.9, 502.1, 501.7, 502.3, 502];

describe('lanes of a run', () => {
  it('of NIST StRD SiRstv are alike: F 1.18046237440255 against 2.8661', () => {
    const control = runControl(siRstv.flatMap((lane, i) => millilitres(lane, `Y${i + 1}`)));
    const { outputs } = control.steps[control.comparison!]!;
    expect(outputs.ratio as number).toBeCloseTo(1.18046237440255, 6);
    expect(outputs.ratioNeeded as number).toBeCloseTo(2.8661, 4);
    expect(control.lanesDiffer).toBe(false);
    expect(control.lanes).toEqual(['Y1', 'Y2', 'Y3', 'Y4', 'Y5']);
  });

  it('differ where one of them is set 3 mL higher', () => {
    const higher = uneven.map((each) => each + 3);
    const control = runControl([...millilitres(uneven, 'Y1'), ...millilitres(higher, 'Y2')]);
    expect(control.lanesDiffer).toBe(true);
  });

  it('are followed each by itself: what lies between two lanes is no drift of either', () => {
    const both = uneven.flatMap((each) => [...millilitres([each], 'Y1'), ...millilitres([each + 9], 'Y2')]);
    expect(runControl(both).series.map(({ drift }) => drift)).toEqual(['none', 'none']);
  });
});

describe('drift', () => {
  it('of the e-Handbook example is seen upwards, at the group that it names or by the average before it', () => {
    const { series } = runControl(millilitres(shifted), { target: 325e-6, spread: 0.635e-6 });
    expect(series[0]!.drift).toBe('up');
    expect(series[0]!.seenAt).toBeGreaterThanOrEqual(13);
    expect(series[0]!.seenAt).toBeLessThanOrEqual(14);
  });

  it('is not seen in the e-Handbook example that has no signal of its moving average', () => {
    const control = runControl(millilitres(steady), { target: 50e-6, spread: 2.0539e-6, weight: 0.3 });
    const { outputs } = control.steps[control.series[0]!.average!]!;
    expect(outputs.firstSignal).toBe(0);
    expect((outputs.high as number) * 1e6).toBeCloseTo(52.5884, 4);
  });

  it('downwards mirrors drift upwards', () => {
    const mirrored = shifted.map((each) => 650 - each);
    const { series } = runControl(millilitres(mirrored), { target: 325e-6, spread: 0.635e-6 });
    const { series: upwards } = runControl(millilitres(shifted), { target: 325e-6, spread: 0.635e-6 });
    expect(series[0]!.drift).toBe('down');
    expect(series[0]!.seenAt).toBe(upwards[0]!.seenAt);
  });
});

describe('capability', () => {
  it('has a bound under what was seen, and the closer the more bottles were weighed', () => {
    const bound = (times: number) => {
      const run = Array.from({ length: times }, () => uneven).flat();
      const control = runControl(millilitres(run), { lowest: 500e-6 });
      const { outputs } = control.steps[control.series[0]!.capability!]!;
      return (outputs.bound as number) / (outputs.capability as number);
    };
    expect(bound(1)).toBeLessThan(1);
    expect(bound(4)).toBeGreaterThan(bound(1));
    expect(bound(4)).toBeLessThan(1);
  });
});

describe('bad input', () => {
  it('names contents that cannot be, at their bottle', () => {
    const { problems } = runControl([{ volume: 0 }, { volume: 5e-4 }, { volume: Number.NaN }]);
    expect(problems.map(({ path }) => path)).toEqual(['0/volume', '2/volume']);
  });

  it('of nothing, of one bottle or of equal bottles stays unknown and makes no figure that is none', () => {
    for (const run of [[], [500], [500, 500, 500, 500]]) {
      const { series, steps } = runControl(millilitres(run), { lowest: 490e-6 });
      expect(series.every(({ drift }) => drift === 'unknown')).toBe(true);
      const figures = steps.flatMap(({ outputs }) => Object.values(outputs).flat());
      expect(figures.every((each) => typeof each === 'string' || Number.isFinite(each))).toBe(true);
    }
  });

  it('has words for every code', () => {
    const found = [
      runControl(millilitres([500])),
      runControl([{ volume: -1 }]),
      runControl(millilitres(uneven, 'Y1')),
    ].flatMap(({ remarks, problems }) => [...remarks, ...problems]);
    expect(found.filter(({ code }) => !Object.hasOwn(lotControlText.en, code))).toEqual([]);
    expect(new Set(found.map(({ code }) => code)).size).toBe(5);
  });
});

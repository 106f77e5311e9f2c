import { describe, expect, it } from 'vitest';
import { bottleSamplesText } from './bottle-samples.text.ts';
import { type BottleSample, bottleSamples } from './bottle-samples.ts';

/** A glass bottle that holds so many grams of water, as the balance shows them, at 22 degC. */
const bottle = (level: number, brimful: number, rest: Partial<BottleSample> = {}): BottleSample => ({
  mass: 0.325,
  levelMass: 0.325 + level / 1000,
  brimfulMass: 0.325 + brimful / 1000,
  temperature: 295.15,
  ...rest,
});
const six = [498.732, 499.4, 498.1, 499.9, 498.5, 499.2];
const flagons = six.map((level, i) =>
  bottle(level, level + 25, {
    bore: 0.022,
    height: 0.24 + i * 1e-4,
    body: 0.075 + (i % 2) * 2e-4,
    lean: 1e-3 + i * 2e-4,
    closureHeight: 0.018,
    closureMass: 2.1e-3 + i * 1e-5,
  }),
);
const near = (value: number | undefined, expected: number, off: number) =>
  expect(Math.abs(value! - expected)).toBeLessThan(off);

describe('a handful of bottles', () => {
  it('holds 500.345 mL at 20 degC where 498.732 g of water at 22 degC fill it, worked apart from this program', () => {
    const { steps } = bottleSamples([bottle(498.732, 520), bottle(498.732, 520)]);
    const capacities = steps.filter(({ sheet }) => sheet === 'contents/vessel-at-20');
    near(capacities.at(-1)?.outputs.capacity as number, 500.345e-6, 1e-9);
  });

  it('gives what a millimetre of level is worth: 0.3801 mL in a neck of 22 mm', () => {
    near(bottleSamples(flagons).millimetre, 0.380133e-6, 1e-12);
  });

  it('or by the profile, where the bore was not measured', () => {
    const profile = { heights: [0.15, 0.2], volumes: [424.115e-6, 443.1217e-6] };
    const { millimetre } = bottleSamples(
      six.map((level) => bottle(level, 520)),
      { profile, levelHeight: 0.18 },
    );
    near(millimetre, 0.380134e-6, 1e-11);
  });

  it('says more surely how far bottles differ the more of them are measured', () => {
    const once = bottleSamples(flagons).quantities.level!;
    const twice = bottleSamples([...flagons, ...flagons, ...flagons]).quantities.level!;
    expect(twice.spreadHigh / twice.spread).toBeLessThan(once.spreadHigh / once.spread);
    expect(once.spreadLow).toBeLessThan(once.spread);
    expect(once.spreadHigh).toBeGreaterThan(once.spread);
  });

  it('says that one level and one volume go together, or not, or that it is not known', () => {
    const asked = (wantedSpread?: number) =>
      bottleSamples(flagons, wantedSpread === undefined ? {} : { wantedSpread }).levelAgainstVolume!.verdict;
    expect(asked(15e-6 / 1.96)).toBe('both');
    expect(asked(0.1e-6)).toBe('not both');
    expect(asked(0.7e-6)).toBe('unknown');
    expect(asked()).toBe('unknown');
  });

  it('that differ in capacity stand at different levels when they get one volume', () => {
    const { levelAgainstVolume, millimetre } = bottleSamples(flagons);
    near(levelAgainstVolume!.levelSpread, (1e-3 * levelAgainstVolume!.spread) / millimetre!, 1e-12);
    // 0.66 mL over 0.38 mL/mm
    expect(levelAgainstVolume!.levelSpread).toBeGreaterThan(1.5e-3);
    expect(levelAgainstVolume!.levelSpread).toBeLessThan(2e-3);
  });

  it('makes the machine take more than was seen: the interval reaches beyond the shortest and the tallest', () => {
    const { accepts } = bottleSamples(flagons);
    const lift = accepts.find(({ part }) => part === 'lift')!;
    expect(lift.low).toBeLessThan(0.24);
    expect(lift.high).toBeGreaterThan(0.2405);
    expect(accepts.map(({ part }) => part)).toContain('cap head');
    expect(accepts.every(({ low }) => low >= 0)).toBe(true);
  });

  it('as measuring containers asks for the rest of the 35', () => {
    const { measuringContainer, steps } = bottleSamples(flagons, { statedBrimful: 525e-6 });
    expect(steps[measuringContainer!]!.outputs).toMatchObject({ verdict: 'take more', more: 29 });
  });
});

describe('bad input', () => {
  it('names a full bottle that is not heavier than the empty one, at its field', () => {
    const { problems, steps } = bottleSamples([bottle(-1, 20), bottle(498, 520)]);
    expect(problems.map(({ code, path }) => [code, path])).toEqual([
      ['SAMPLE_FULL_UNDER_EMPTY', '0/levelMass'],
    ]);
    expect(steps).toEqual([]);
    expect(problems.every(({ code }) => Object.hasOwn(bottleSamplesText.en, code))).toBe(true);
  });

  it('of one bottle or of none says what is missing and makes no figure', () => {
    for (const samples of [[], [bottle(498, 520)]]) {
      const { quantities, missing, accepts } = bottleSamples(samples);
      expect(quantities).toEqual({});
      expect(accepts).toEqual([]);
      expect(missing.every(({ code }) => Object.hasOwn(bottleSamplesText.en, code))).toBe(true);
      expect(missing).toHaveLength(11);
    }
  });

  it('of bottles that are all alike gives a spread of nothing and says that the reading may be too coarse', () => {
    const { quantities, steps } = bottleSamples([bottle(498, 520), bottle(498, 520), bottle(498, 520)]);
    expect(quantities.level!.spread).toBe(0);
    const notes = steps[quantities.level!.step]!.notes.map(({ code }) => code);
    expect(notes).toContain('SPREAD_NONE');
  });
});

import type { Problem } from '../quantity/problem.ts';
import { lengthSpreadSheet } from '../sheets/contents/length-spread.ts';
import { levelVolumeSheet } from '../sheets/contents/level-volume.ts';
import { massSpreadSheet } from '../sheets/contents/mass-spread.ts';
import { measuringContainerSheet } from '../sheets/contents/measuring-container.ts';
import type { SampleSpread } from '../sheets/contents/sample-spread.ts';
import { vesselAt20Sheet } from '../sheets/contents/vessel-at-20.ts';
import { volumeAtLevelSheet } from '../sheets/contents/volume-at-level.ts';
import { volumeByWeighingSheet } from '../sheets/contents/volume-by-weighing.ts';
import { volumeSpreadSheet } from '../sheets/contents/volume-spread.ts';
import { waterDensitySheet } from '../sheets/water/water-density.ts';
import type { BottleSample, SampleQuestions } from './bottle-sample.ts';
import { makeWorksheet, outputOf, type Step, type StepInput, type Worksheet } from './worksheet.ts';

export type { BottleSample, SampleQuestions } from './bottle-sample.ts';

/** A quantity of the bottles, and which step of the worksheet gave it. */
export interface SampledQuantity extends SampleSpread {
  readonly n: number;
  readonly step: number;
}

export const sampledNames = [
  'brimful',
  'level',
  'height',
  'bore',
  'finish',
  'body',
  'mass',
  'lean',
  'closureMass',
  'closureHeight',
  'closedHeight',
] as const;
export type SampledName = (typeof sampledNames)[number];

/** Whether one level also means one volume. */
export interface LevelAgainstVolume {
  readonly verdict: 'both' | 'not both' | 'unknown';
  /** Standard deviation of the volume at one level, m3, as found and its bounds. */
  readonly spread: number;
  readonly spreadLow: number;
  readonly spreadHigh: number;
  readonly wanted?: number;
  /** Standard deviation of the level where every bottle gets one volume, m. */
  readonly levelSpread?: number;
}

/** From where to where nearly all bottles lie: what the machine must accept. */
export interface Accepts {
  readonly part: 'lift' | 'grippers' | 'nozzle' | 'cap head' | 'cap chute';
  readonly of: SampledName;
  readonly low: number;
  readonly high: number;
}

export interface BottleSamples {
  readonly quantities: Readonly<Partial<Record<SampledName, SampledQuantity>>>;
  /** What one millimetre of level is worth, m3. */
  readonly millimetre?: number;
  readonly levelAgainstVolume?: LevelAgainstVolume;
  readonly accepts: readonly Accepts[];
  /** Step of the sheet of measuring containers, where the bottles state a capacity. */
  readonly measuringContainer?: number;
  readonly missing: readonly Problem[];
  readonly problems: readonly Problem[];
  readonly steps: readonly Step[];
}

const wrongMasses = (samples: readonly BottleSample[]): readonly Problem[] =>
  samples.flatMap((sample, i) =>
    (['brimfulMass', 'levelMass'] as const).flatMap((field) => {
      const { [field]: full, mass = 0 } = sample;
      return full === undefined || full > mass
        ? []
        : [{ code: 'SAMPLE_FULL_UNDER_EMPTY', path: `${i}/${field}`, given: full, allowed: `> ${mass}` }];
    }),
  );

/** Capacity of one bottle at 20 degC from a mass of water: density, weighing, vessel. */
const capacityOf = (
  sheet: Worksheet,
  sample: BottleSample,
  full: number,
  { airDensity, expansion }: SampleQuestions,
  place: string,
): number | undefined => {
  const { mass, temperature } = sample;
  if (mass === undefined || temperature === undefined) return undefined;
  const water = sheet.run(waterDensitySheet, { temperature }, { temperature: `${place}/temperature` });
  if (!water.ok) return undefined;
  const density = outputOf(water.value, 'density');
  const weighed = sheet.run(
    volumeByWeighingSheet,
    { mass: full - mass, density, airDensity },
    { mass: place },
  );
  if (!weighed.ok) return undefined;
  const volume = outputOf(weighed.value, 'volume');
  const vessel = sheet.run(
    vesselAt20Sheet,
    { volume, temperature, expansion },
    { temperature: `${place}/temperature` },
  );
  return vessel.ok ? sheet.number(outputOf(vessel.value, 'capacity')) : undefined;
};

const known = (values: readonly (number | undefined)[]): readonly number[] =>
  values.filter((value) => value !== undefined);

/** What one millimetre of level is worth: by the bore of the neck, else by the profile at the level. */
const millimetreOf = (
  sheet: Worksheet,
  bore: SampledQuantity | undefined,
  { profile, levelHeight }: SampleQuestions,
): number | undefined => {
  if (bore !== undefined) {
    const from: StepInput = outputOf(bore.step, 'mean');
    const step = sheet.run(levelVolumeSheet, { bore: from }, { bore: 'bore' });
    return step.ok ? sheet.number(outputOf(step.value, 'volume')) : undefined;
  }
  if (profile === undefined || levelHeight === undefined) return undefined;
  const step = sheet.run(
    volumeAtLevelSheet,
    { ...profile, level: levelHeight },
    { heights: 'profile', volumes: 'profile', level: 'levelHeight' },
  );
  return step.ok ? sheet.number(outputOf(step.value, 'millimetre')) : undefined;
};

const levelAgainstVolume = (
  { spread, spreadLow, spreadHigh }: SampledQuantity,
  wanted: number | undefined,
  millimetre: number | undefined,
): LevelAgainstVolume => ({
  // decided only where the whole interval of the spread lies on one side
  verdict:
    wanted === undefined
      ? 'unknown'
      : spreadHigh <= wanted
        ? 'both'
        : spreadLow > wanted
          ? 'not both'
          : 'unknown',
  spread,
  spreadLow,
  spreadHigh,
  ...(wanted === undefined ? {} : { wanted }),
  ...(millimetre === undefined ? {} : { levelSpread: (1e-3 * spread) / millimetre }),
});

/** Which part of the machine meets which dimension. */
const meets: readonly (readonly [Accepts['part'], SampledName])[] = [
  ['lift', 'height'],
  ['grippers', 'body'],
  ['nozzle', 'bore'],
  ['nozzle', 'lean'],
  ['cap head', 'finish'],
  ['cap head', 'closedHeight'],
  ['cap chute', 'closureHeight'],
];

const sum = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? undefined : a + b;

/**
 * What a handful of the customer's bottles and caps says of all of them.
 *
 * Method   capacities by weighing water, at 20 degC; mean, spread and their bounds; tolerance intervals for what the
 *          machine must take; the spread of volume at one level against the spread that is wanted
 * Symbols  samples    [n]  bottles, each with what was measured on it
 *          questions       confidence, coverage, level, wanted spread
 * Returns  quantities, each with its step on the worksheet; a quantity measured on fewer than two bottles is missing
 * Assumes  bottles drawn as they come; where several moulds are known, asked once for each
 * Cost     O(n)
 * Source   the sheets of the steps
 */
export const bottleSamples = (
  samples: readonly BottleSample[],
  questions: SampleQuestions = {},
): BottleSamples => {
  const sheet = makeWorksheet();
  const problems = wrongMasses(samples);
  if (problems.length > 0) return { quantities: {}, accepts: [], missing: [], problems, steps: [] };
  const { confidence, coverage, wantedSpread, statedBrimful } = questions;
  const capacities = (field: 'brimfulMass' | 'levelMass'): readonly number[] =>
    known(
      samples.map((sample, i) =>
        sample[field] === undefined
          ? undefined
          : capacityOf(sheet, sample, sample[field], questions, `${i}/${field}`),
      ),
    );
  const values: Readonly<Record<SampledName, readonly number[]>> = {
    brimful: capacities('brimfulMass'),
    level: capacities('levelMass'),
    height: known(samples.map(({ height }) => height)),
    bore: known(samples.map(({ bore }) => bore)),
    finish: known(samples.map(({ finish }) => finish)),
    body: known(samples.map(({ body }) => body)),
    mass: known(samples.map(({ mass }) => mass)),
    lean: known(samples.map(({ lean }) => lean)),
    closureMass: known(samples.map(({ closureMass }) => closureMass)),
    closureHeight: known(samples.map(({ closureHeight }) => closureHeight)),
    closedHeight: known(samples.map(({ height, closureHeight }) => sum(height, closureHeight))),
  };
  const quantities: Partial<Record<SampledName, SampledQuantity>> = {};
  const missing: Problem[] = [];
  for (const name of sampledNames) {
    const measured = values[name];
    if (measured.length < 2) {
      missing.push({ code: 'SAMPLE_FEW', path: name, given: measured.length, allowed: '>= 2' });
      continue;
    }
    const volume = name === 'brimful' || name === 'level';
    const mass = name === 'mass' || name === 'closureMass';
    const of = volume ? volumeSpreadSheet : mass ? massSpreadSheet : lengthSpreadSheet;
    const step = sheet.run(of, { values: measured, confidence, coverage }, { values: name });
    if (!step.ok) continue;
    const outputs = sheet.steps[step.value]!.outputs as unknown as SampleSpread;
    quantities[name] = { ...outputs, n: measured.length, step: step.value };
  }
  const millimetre = millimetreOf(sheet, quantities.bore, questions);
  const container =
    statedBrimful === undefined || values.brimful.length < 2
      ? undefined
      : sheet.run(
          measuringContainerSheet,
          { capacity: statedBrimful, measured: values.brimful },
          { capacity: 'statedBrimful', measured: 'brimful' },
        );
  return {
    quantities,
    ...(millimetre === undefined ? {} : { millimetre }),
    ...(quantities.level === undefined
      ? {}
      : { levelAgainstVolume: levelAgainstVolume(quantities.level, wantedSpread, millimetre) }),
    accepts: meets.flatMap(([part, of]) => {
      const { [of]: quantity } = quantities;
      // no bottle leans less than not at all
      return quantity === undefined
        ? []
        : [{ part, of, low: Math.max(0, quantity.low), high: quantity.high }];
    }),
    ...(container?.ok ? { measuringContainer: container.value } : {}),
    missing,
    problems: sheet.problems,
    steps: sheet.steps,
  };
};

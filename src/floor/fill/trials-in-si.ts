import type { Entered, EnteredBottle } from '../../fill/slips.ts';
import type { FillTrial } from '../../fill/trial.ts';
import type { Kind } from '../../quantity/kinds.ts';
import type { Problem } from '../../quantity/problem.ts';
import type { BookReader } from '../book-reader.ts';
import { type BottleVolume, bottleVolume } from './bottle-volume.ts';
import type { FillFloor } from './fill-floor.ts';
import { levelVolume } from './level-volume.ts';
import { fillProblem } from './problems.ts';
import { densityAt } from './product-density.ts';
import type { TrialNote, TrialNoteCode, TrialRefused } from './trial-note.ts';
import { type TypedNumber, typedNumber } from './typed-number.ts';
import type { WeighedTrial } from './weighed.ts';

/** One trial with what was made of it. */
export interface TrialInSi {
  /** Place among those that were given. */
  readonly trial: number;
  readonly fill: FillTrial;
  readonly entered: EnteredBottle;
  /** How its volume came from the balance; absent where it was measured otherwise or not at all. */
  readonly weighing?: BottleVolume;
}

export interface TrialsInSi {
  readonly trials: readonly TrialInSi[];
  readonly notes: readonly TrialNote[];
  readonly refused: readonly TrialRefused[];
}

/** A thermometer in the bottle, and a temperature that holds for the floor, half width in K. */
const ownTemperature = 1;
const floorTemperature = 3;
/** A bottle this near to its level may have run over, as a share. */
const nearLevel = 0.01;
const rootTwelve = Math.sqrt(12);

const kindOf = {
  gross: 'mass',
  tare: 'mass',
  time: 'time',
  volume: 'volume',
  level: 'length',
  temperature: 'temperature',
  pressure: 'gaugePressure',
  resolution: 'mass',
} as const satisfies Readonly<Record<string, Kind>>;
type Field = keyof typeof kindOf;

type Numbers = Readonly<Partial<Record<Field, TypedNumber>>>;

const numbersOf = (
  trial: WeighedTrial,
): { readonly numbers: Numbers; readonly problems: readonly Problem[] } => {
  const numbers: Partial<Record<Field, TypedNumber>> = {};
  const problems: Problem[] = [];
  for (const field of Object.keys(kindOf) as Field[]) {
    const text = trial[field];
    if (text === undefined) continue;
    const read = typedNumber(text, kindOf[field], field);
    if (read.ok) numbers[field] = read.value;
    // the division of a rule or a watch is none of a balance; it is not what makes a trial
    else if (field !== 'resolution') problems.push(...read.problems);
  }
  return { numbers, problems };
};

/** Division of a measuring vessel, m3; the resolution of a trial is that of its balance where it was weighed. */
const measureDivision = ({ resolution }: WeighedTrial): number | undefined => {
  const read = resolution === undefined ? undefined : typedNumber(resolution, 'volume', 'resolution');
  return read?.ok ? read.value.value : undefined;
};

interface Tares {
  readonly value: number;
  readonly deviation: number;
}

/** Mean and spread of the empty bottles that were weighed; none where there are fewer than two. */
const usualTare = (all: readonly Numbers[]): Tares | undefined => {
  const values = all.flatMap(({ tare }) => (tare === undefined || !(tare.value > 0) ? [] : [tare.value]));
  if (values.length < 2) return undefined;
  const value = values.reduce((sum, one) => sum + one, 0) / values.length;
  const squares = values.reduce((sum, one) => sum + (one - value) ** 2, 0);
  return { value, deviation: Math.sqrt(squares / (values.length - 1)) };
};

const enteredAs = (number: TypedNumber | undefined): Entered | undefined =>
  number === undefined ? undefined : { value: number.value, typed: number.typed };

type Circumstances = Pick<WeighedTrial, 'row' | 'lanesOpen' | 'throttled' | 'afterStop'>;

interface Ground {
  readonly reader: BookReader;
  readonly floor: FillFloor;
  /** Density of a product at a temperature, kg/m3. */
  readonly densityAt: (temperature: number, product: string | undefined) => number | undefined;
  readonly tares: Tares | undefined;
  /** m3 */
  readonly level: number | undefined;
}

/** The same temperature is read at bottle after bottle: each is looked up once. */
const densitiesOf = (reader: BookReader, { inputs }: FillFloor): Ground['densityAt'] => {
  const found = new Map<string, number | undefined>();
  return (temperature, product) => {
    const key = `${temperature} ${product ?? ''}`;
    if (!found.has(key)) found.set(key, densityAt(reader, inputs, temperature, product));
    return found.get(key);
  };
};

/** A volume with what is uncertain of it alone, and of all that were weighed alike. */
const volumeOf = ({
  volume,
  deviation,
  calibration = 0,
}: {
  readonly volume: number;
  readonly deviation: number;
  readonly calibration?: number;
}): Pick<FillTrial, 'volume' | 'volumeDeviation' | 'commonDeviation'> => ({
  volume,
  volumeDeviation: Math.sqrt(deviation * deviation - calibration * calibration),
  ...(calibration > 0 ? { commonDeviation: calibration } : {}),
});

const inSi = (
  trial: WeighedTrial,
  numbers: Numbers,
  at: number,
  { reader, floor, densityAt, tares, level }: Ground,
): { readonly made: TrialInSi; readonly notes: readonly TrialNoteCode[] } | Problem => {
  const { inputs } = floor;
  const notes: TrialNoteCode[] = [];
  const { gross, tare, time, pressure } = numbers;
  let held:
    | { readonly volume: number; readonly deviation: number; readonly calibration?: number }
    | undefined;
  let weighing: BottleVolume | undefined;
  if (numbers.volume !== undefined) {
    const { value, deviation, lastDigit } = numbers.volume;
    held = { volume: value, deviation: deviation ?? (measureDivision(trial) ?? lastDigit) / rootTwelve };
  } else if (gross !== undefined) {
    const bottle = tare ?? tares;
    if (bottle === undefined) notes.push('tareMissing');
    else {
      if (tare === undefined) notes.push('tareOfOthers');
      if (!(gross.value > bottle.value)) {
        return fillProblem('FILL_NET_NOT_POSITIVE', 'gross', {
          given: trial.gross ?? '',
          allowed: trial.tare ?? `${bottle.value} kg`,
        });
      }
      const own = numbers.temperature?.value;
      const temperature = own ?? inputs.liquid?.temperature;
      if (own === undefined) notes.push('temperatureAssumed');
      if (gross.deviation === undefined) {
        if (numbers.resolution === undefined) notes.push('divisionAssumed');
        if (trial.calibrated === undefined) notes.push('calibrationAssumed');
      }
      weighing =
        temperature === undefined
          ? undefined
          : bottleVolume({
              gross,
              tare: bottle,
              division: numbers.resolution?.value ?? gross.lastDigit,
              temperature,
              temperatureWidth: own === undefined ? floorTemperature : ownTemperature,
              densityAt: (warm) => densityAt(warm, trial.product),
            });
      if (weighing === undefined) notes.push('densityMissing');
      held = weighing;
    }
  } else if (numbers.level !== undefined) {
    held = levelVolume(reader, inputs, numbers.level);
    if (held === undefined) notes.push('profileMissing');
  }
  const near = level !== undefined && held !== undefined && Math.abs(held.volume / level - 1) < nearLevel;
  if (trial.overflow === undefined && near) notes.push('overflowNotSaid');
  const open = (['row', 'lanesOpen', 'throttled', 'afterStop'] as const).flatMap((field) =>
    trial[field] === undefined ? [] : [[field, trial[field]] as const],
  );
  const circumstances = Object.fromEntries(open) as Circumstances;
  const enteredGross = enteredAs(gross);
  const enteredTare = enteredAs(tare);
  const enteredTime = enteredAs(time);
  return {
    notes,
    made: {
      trial: at,
      fill: {
        ...circumstances,
        lane: trial.lane,
        preset: trial.preset,
        overflow: trial.overflow ?? 'none',
        ...(held === undefined ? {} : volumeOf(held)),
        ...(time === undefined
          ? {}
          : { time: time.value, timeDeviation: time.deviation ?? time.lastDigit / rootTwelve }),
        ...(pressure === undefined
          ? {}
          : {
              pressure: pressure.value,
              ...(pressure.deviation === undefined ? {} : { pressureDeviation: pressure.deviation }),
            }),
      },
      entered: {
        ...circumstances,
        lane: trial.lane,
        preset: trial.preset,
        ...(trial.overflow === undefined ? {} : { overflow: trial.overflow }),
        ...(enteredGross === undefined ? {} : { gross: enteredGross }),
        ...(enteredTare === undefined ? {} : { tare: enteredTare }),
        ...(enteredTime === undefined ? {} : { time: enteredTime }),
      },
      ...(weighing === undefined ? {} : { weighing }),
    },
  };
};

/**
 * The trials of one floor as plain numbers, with what had to be assumed and what is wanted.
 *
 * Method   volume = net mass through buoyancy and density at the bottle's temperature; or as measured; or by its level. A
 *          bottle without its own tare takes the mean of the others with their spread; a spread that was typed with a
 *          value goes before any division
 * Returns  those that can be read; every one that can't with all its problems
 * Cost     O(n)
 * Source   `sheets/contents/volume-by-weighing`, `weighing-uncertainty`
 */
export const trialsInSi = (
  reader: BookReader,
  floor: FillFloor,
  given: readonly WeighedTrial[],
): TrialsInSi => {
  const read = given.map((trial) => numbersOf(trial));
  const tares = usualTare(read.map(({ numbers }) => numbers));
  const level = floor.inputs.model.level;
  const ground: Ground = { reader, floor, densityAt: densitiesOf(reader, floor), tares, level };
  const trials: TrialInSi[] = [];
  const notes: TrialNote[] = [];
  const refused: TrialRefused[] = [];
  const product = floor.inputs.liquid?.product;
  for (const [at, trial] of given.entries()) {
    if (trial.floor !== floor.tag) continue;
    const { numbers, problems } = read[at]!;
    if (problems.length > 0) {
      refused.push({ trial: at, problems });
      continue;
    }
    if (trial.product !== undefined && trial.product !== product) {
      notes.push({ code: 'otherProduct', trial: at });
      continue;
    }
    const result = inSi(trial, numbers, at, ground);
    if ('code' in result) refused.push({ trial: at, problems: [result] });
    else {
      trials.push(result.made);
      notes.push(...result.notes.map((code) => ({ code, trial: at })));
    }
  }
  return { trials, notes, refused };
};

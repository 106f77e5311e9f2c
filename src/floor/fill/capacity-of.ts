import type { Capacity } from '../../fill/presets-for-level.ts';
import { waterDensity } from '../../sheets/water/water-density.ts';
import type { BookReader } from '../book-reader.ts';
import { bottleVolume } from './bottle-volume.ts';
import type { FillFloor } from './fill-floor.ts';
import { typedNumber } from './typed-number.ts';
import type { MeasuredSample } from './weighed.ts';

/** Where what the bottles hold to their level comes from. */
export type CapacityFrom =
  /** Bottles that were weighed full to the level. */
  | 'samples'
  /** The book, with the spread that it gives. */
  | 'book'
  /** The book's volume, with a spread that nobody measured. */
  | 'assumed';

export interface CapacityFound {
  readonly capacity: Capacity;
  readonly from: CapacityFrom;
}

/** Glass of one mould differs by about this share of its volume from bottle to bottle; common practice. */
const usualSpread = 0.002;
/** The level of one drawing against that of the bottles that come, as a share of the volume. */
const usualOffset = 0.001;
/** Fewer bottles say too little of their spread. */
const fewest = 3;
const roomTemperature = 293.15;

/** Volume to the level of each bottle that was weighed empty and full of water, m3. */
export const levelVolumes = (samples: readonly MeasuredSample[]): readonly number[] =>
  samples.flatMap(({ mass, levelMass, temperature, resolution }) => {
    if (mass === undefined || levelMass === undefined) return [];
    const [tare, gross] = [typedNumber(mass, 'mass', 'mass'), typedNumber(levelMass, 'mass', 'levelMass')];
    if (!tare.ok || !gross.ok || !(gross.value.value > tare.value.value)) return [];
    const warm =
      temperature === undefined ? undefined : typedNumber(temperature, 'temperature', 'temperature');
    const division = resolution === undefined ? undefined : typedNumber(resolution, 'mass', 'resolution');
    const held = bottleVolume({
      gross: gross.value,
      tare: tare.value,
      division: division?.ok ? division.value.value : gross.value.lastDigit,
      temperature: warm?.ok ? warm.value.value : roomTemperature,
      temperatureWidth: warm?.ok ? 1 : 5,
      densityAt: (kelvin) => (kelvin >= 273.15 && kelvin <= 368.15 ? waterDensity(kelvin) : undefined),
    });
    return held === undefined ? [] : [held.volume];
  });

/** What the bottles hold to their level, by the bottles themselves where enough were measured; else by the book. */
export const capacityOf = (
  reader: BookReader,
  { inputs }: FillFloor,
  samples: readonly MeasuredSample[],
): CapacityFound | undefined => {
  const format = inputs.format?.tag;
  const volumes = levelVolumes(samples.filter((sample) => sample.format === format));
  if (volumes.length >= fewest) {
    const mean = volumes.reduce((sum, one) => sum + one, 0) / volumes.length;
    const squares = volumes.reduce((sum, one) => sum + (one - mean) ** 2, 0);
    const deviation = Math.sqrt(squares / (volumes.length - 1));
    return {
      from: 'samples',
      capacity: {
        mean,
        deviation,
        meanDeviation: deviation / Math.sqrt(volumes.length),
        dof: volumes.length - 1,
      },
    };
  }
  const level = reader.reading(`${inputs.formatPath}/level`, 'volume');
  if (level === undefined) return undefined;
  const mean = level.value as number;
  if (level.sd !== undefined) {
    return {
      from: 'book',
      capacity: { mean, deviation: level.sd, meanDeviation: 0, dof: Number.POSITIVE_INFINITY },
    };
  }
  return {
    from: 'assumed',
    capacity: {
      mean,
      deviation: usualSpread * mean,
      meanDeviation: usualOffset * mean,
      dof: Number.POSITIVE_INFINITY,
    },
  };
};

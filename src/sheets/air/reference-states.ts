import { type AirReference, airReferences } from '../../quantity/air-reference.ts';
import { gasConstant } from './dry-air.ts';
import { saturationOverWater } from './saturation.ts';

export type ReferenceId = AirReference['id'];

/** States that a volume of free air is stated at; `src/quantity` keeps the list with its sources. */
export const referenceIds: readonly ReferenceId[] = airReferences.map(({ id }) => id);

/** Whether the humidity of a state is counted in what it holds, or left out as pneumatics does. */
export type Counting = 'humidity left out' | 'humidity counted';
export const countings: readonly Counting[] = ['humidity left out', 'humidity counted'];

/**
 * Dry air in a cubic metre of a reference state.
 *
 * Method   rho = (p - phi e_s(T))/(R T); phi = 0 where humidity is left out
 * Symbols  id, counting
 * Returns  kg/m3
 * Cost     O(1)
 * Source   ideal gas law; states of `airReferences`
 */
export const referenceDryDensity = (id: ReferenceId, counting: Counting): number => {
  const { pressure, temperature, relativeHumidity } =
    airReferences.find((each) => each.id === id) ?? airReferences[0]!;
  const vapour = counting === 'humidity counted' ? relativeHumidity * saturationOverWater(temperature) : 0;
  return (pressure - vapour) / (gasConstant * temperature);
};

/** Words of the states, in English. */
export const referenceWords = {
  ANR: 'ANR, ISO 8778: 100 kPa, 20 degC, 65 %',
  FAD: 'FAD, ISO 1217: 100 kPa, 20 degC, dry',
  'DIN 1343': 'DIN 1343: 101.325 kPa, 0 degC, dry',
  CAGI: 'CAGI: 14.5 psia, 68 degF, dry',
  '15 degC': 'ISO 2533, ISO 13443: 101.325 kPa, 15 degC, dry',
  '14.7 psia 68 degF': 'older US pneumatics: 14.7 psia, 68 degF, 36 %',
  '60 degF': 'US gas trade: 14.696 psia, 60 degF, dry',
} as const satisfies Readonly<Record<ReferenceId, string>>;

export const countingWords = {
  'humidity left out': 'left out, as for pneumatic parts',
  'humidity counted': 'counted, as for a compressor',
} as const satisfies Readonly<Record<Counting, string>>;

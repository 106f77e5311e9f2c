import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { supplyPressures } from './bounds.ts';
import { derived } from './sources.ts';

const usual = {
  title: 'compressed air trade',
  place: 'band of a compressor',
  mark: 'common practice',
} as const;

/**
 * Pressure at which a compressor loads again, where only its delivery pressure is known.
 *
 * Method   p_1 = max(0, p_2 - dp)
 * Symbols  p_2  cutOut  scalar  Pa gauge
 *          dp   band    scalar  Pa        1 bar, from memory
 * Returns  Pa gauge
 * Cost     O(1)
 * Source   definition; the band is common practice
 */
export const cutInPressure = (cutOut: number, band: number): number => Math.max(0, cutOut - band);

interface CutInPressureInputs {
  readonly cutOut: number;
  readonly band: number;
}

export const cutInPressureSheet = defineSheet({
  id: 'air/cut-in-pressure',
  version: 1,
  inputs: {
    cutOut: numberField('gaugePressure', 'p_2', supplyPressures),
    band: numberField('pressureDifference', '\\Delta p', { least: 0, most: 1e6, assumed: 1e5 }),
  },
  outputs: { cutIn: numberField('gaugePressure', 'p_1') },
  formula: ['p_1 = \\max ( 0, p_2 - \\Delta p )'],
  limits: [
    { code: 'BAND_USUAL', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived, usual],
  compute: (i: CutInPressureInputs) => ({ cutIn: cutInPressure(i.cutOut, i.band) }),
});

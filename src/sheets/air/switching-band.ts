import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { supplyPressures } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Band between loading and unloading.
 *
 * Method   dp = p_2 - p_1
 * Symbols  p_2  cutOut  scalar  Pa gauge
 *          p_1  cutIn   scalar  Pa gauge  below p_2
 * Returns  Pa
 * Problems BAND_EMPTY
 * Cost     O(1)
 * Source   definition
 */
export const switchingBand = (cutOut: number, cutIn: number): number => cutOut - cutIn;

interface SwitchingBandInputs {
  readonly cutOut: number;
  readonly cutIn: number;
}

export const switchingBandSheet = defineSheet({
  id: 'air/switching-band',
  version: 1,
  inputs: {
    cutOut: numberField('gaugePressure', 'p_2', supplyPressures),
    cutIn: numberField('gaugePressure', 'p_1', supplyPressures),
  },
  outputs: { band: numberField('pressureDifference', '\\Delta p') },
  formula: ['\\Delta p = p_2 - p_1'],
  limits: [],
  sources: [derived],
  check: ({ cutOut, cutIn }) =>
    cutIn < cutOut ? [] : [{ code: 'BAND_EMPTY', path: 'cutIn', given: cutIn, allowed: `< ${cutOut}` }],
  compute: (i: SwitchingBandInputs) => ({ band: switchingBand(i.cutOut, i.cutIn) }),
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { logs, temperatures, times, timesAboveZero, zValues } from './bounds.ts';
import { always, authority, heatCaution } from './caution.ts';
import { dValueArticle } from './sources.ts';

/**
 * Time for one decade of germs at a temperature.
 *
 * Method   D = D_0 10^((T_0 - T)/z)
 * Symbols  D_0  d            scalar  s  at the reference
 *          T_0  reference    scalar  K
 *          z    z            scalar  K  degrees for a tenth of the time
 *          T    temperature  scalar  K
 * Returns  time, s
 * Cost     O(1)
 * Source   Bigelow 1921
 */
export const decimalTime = (d: number, reference: number, z: number, temperature: number): number =>
  d * 10 ** ((reference - temperature) / z);

interface DValueInputs {
  readonly d: number;
  readonly reference: number;
  readonly z: number;
  readonly temperature: number;
  readonly time: number;
  readonly logs: number;
}

export const dValueSheet = defineSheet({
  id: 'hygiene/d-value',
  version: 1,
  inputs: {
    d: numberField('time', 'D_0', { least: 1e-3, most: timesAboveZero.most }),
    reference: numberField('temperature', 'T_0', temperatures),
    z: numberField('temperatureDifference', 'z', zValues),
    temperature: numberField('temperature', 'T', temperatures),
    time: numberField('time', 't', { ...times, assumed: 0 }),
    logs: numberField('ratio', 'L', logs),
  },
  outputs: {
    decimalTime: numberField('time', 'D_T'),
    neededTime: numberField('time', 't_L'),
    reached: numberField('ratio', 'L_t'),
  },
  formula: ['D_T = D_0 \\, 10^{(T_0 - T)/z}, \\quad t_L = L D_T, \\quad L_t = \\frac{t}{D_T}'],
  limits: [authority, always('LETHALITY_COLDEST'), heatCaution],
  sources: [dValueArticle],
  compute: (i: DValueInputs) => {
    const one = decimalTime(i.d, i.reference, i.z, i.temperature);
    return { decimalTime: one, neededTime: i.logs * one, reached: i.time / one };
  },
});

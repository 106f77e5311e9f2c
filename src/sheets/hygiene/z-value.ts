import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { temperatures, timesAboveZero } from './bounds.ts';
import { authority } from './caution.ts';
import { dValueArticle } from './sources.ts';

interface ZValueInputs {
  readonly colder: number;
  readonly dColder: number;
  readonly warmer: number;
  readonly dWarmer: number;
}

/**
 * Degrees that cut the time for a decade to a tenth.
 *
 * Method   z = (T_2 - T_1)/log10(D_1/D_2)
 * Symbols  T_1, D_1  colder, dColder  K, s
 *          T_2, D_2  warmer, dWarmer  K, s
 * Returns  temperature difference, K
 * Cost     O(1)
 * Source   Bigelow 1921
 */
export const zValue = ({ colder, dColder, warmer, dWarmer }: ZValueInputs): number =>
  (warmer - colder) / Math.log10(dColder / dWarmer);

const decimalTimes = { least: 1e-3, most: timesAboveZero.most } as const;

export const zValueSheet = defineSheet({
  id: 'hygiene/z-value',
  version: 1,
  inputs: {
    colder: numberField('temperature', 'T_1', temperatures),
    dColder: numberField('time', 'D_1', decimalTimes),
    warmer: numberField('temperature', 'T_2', temperatures),
    dWarmer: numberField('time', 'D_2', decimalTimes),
  },
  outputs: { z: numberField('temperatureDifference', 'z') },
  formula: ['z = \\frac{T_2 - T_1}{\\log_{10} ( D_1 / D_2 )}'],
  limits: [authority, { code: 'Z_NOT_OF_A_GERM', broken: (_, { z }) => z < 4 || z > 20 }],
  sources: [dValueArticle],
  check: ({ colder, warmer, dColder, dWarmer }) => [
    ...(warmer > colder ? [] : [{ code: 'Z_WARMER', path: 'warmer', given: warmer, allowed: `> ${colder}` }]),
    ...(dWarmer < dColder
      ? []
      : [{ code: 'Z_FASTER', path: 'dWarmer', given: dWarmer, allowed: `< ${dColder}` }]),
  ],
  compute: (i: ZValueInputs) => ({ z: zValue(i) }),
});

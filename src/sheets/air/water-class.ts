import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import {
  classByLimit,
  liquidWaterLimits,
  type PurityClass,
  purityClasses,
  waterLimits,
} from './purity-classes.ts';
import { iso8573 } from './sources.ts';

/**
 * Class of water of ISO 8573-1 that a pressure dew point and liquid water meet.
 *
 * Method   no liquid: the first of -70, -40, -20, +3, +7, +10 degC that the dew point does not pass; else by liquid
 * Symbols  T    dewPoint  scalar  K      at the pressure of the line
 *          C_w  liquid    scalar  kg/m3  0 where there is none
 * Returns  class 1 to 9, or X
 * Cost     O(1)
 * Source   ISO 8573-1:2010
 */
export const waterClass = (dewPoint: number, liquid: number): PurityClass => {
  // in kelvin, where a millionth of a degree is only the rounding of a conversion
  const vapour = waterLimits.findIndex((limit) => dewPoint <= limit + 273.15 + 1e-6);
  return liquid === 0 && vapour >= 0
    ? (`${vapour + 1}` as PurityClass)
    : classByLimit(liquid, liquidWaterLimits, 7);
};

export const waterClassSheet = defineSheet({
  id: 'air/water-class',
  version: 1,
  inputs: {
    dewPoint: numberField('temperature', 'T_d', { least: 173.15, most: 373.15 }),
    liquid: numberField('massConcentration', 'C_w', { least: 0, most: 1000, assumed: 0 }),
  },
  outputs: { waterClass: choiceField<PurityClass>('\\text{class}', purityClasses) },
  formula: [
    '\\text{class} = \\min \\{ k : T_d \\le T_k \\}, \\quad \\text{with liquid: } \\min \\{ k : C_w \\le C_k \\}',
  ],
  limits: [
    { code: 'PURITY_CLASS_ZERO', broken: (_, { waterClass: given }) => given === '1' },
    { code: 'PURITY_SECOND_HAND', broken: () => true },
  ],
  sources: [iso8573],
  compute: (i: { readonly dewPoint: number; readonly liquid: number }) => ({
    waterClass: waterClass(i.dewPoint, i.liquid),
  }),
});

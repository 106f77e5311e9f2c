import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { classByLimit, oilLimits, type PurityClass, purityClasses } from './purity-classes.ts';
import { iso8573 } from './sources.ts';

/**
 * Class of oil of ISO 8573-1.
 *
 * Method   the first of 0.01, 0.1, 1 and 5 mg/m3 that holds it
 * Symbols  oil  scalar  kg/m3  liquid, aerosol and vapour together, at 20 degC, 1 bar absolute, dry
 * Returns  class 1 to 4, or X
 * Cost     O(1)
 * Source   ISO 8573-1:2010
 */
export const oilClass = (oil: number): PurityClass => classByLimit(oil, oilLimits, 1);

export const oilClassSheet = defineSheet({
  id: 'air/oil-class',
  version: 1,
  inputs: { oil: numberField('massConcentration', 'C_o', { least: 0, most: 1 }) },
  outputs: { oilClass: choiceField<PurityClass>('\\text{class}', purityClasses) },
  formula: ['\\text{class} = \\min \\{ k : C_o \\le C_k \\}'],
  limits: [
    { code: 'PURITY_CLASS_ZERO', broken: (_, { oilClass: given }) => given === '1' },
    { code: 'PURITY_SECOND_HAND', broken: () => true },
  ],
  sources: [iso8573],
  compute: (i: { readonly oil: number }) => ({ oilClass: oilClass(i.oil) }),
});

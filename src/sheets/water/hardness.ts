import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';

/** mg/L of CaCO3 in a degree or unit; molar masses of CaCO3 and CaO 100.086 and 56.077 g/mol. */
const german = (10 * 100.086) / 56.077;
const french = 10;
/** A grain, 64.79891 mg, in an imperial gallon of 4.54609 L and in a US one of 3.785411784 L. */
const english = 64.79891 / 4.54609;
const grainsPerUsGallon = 64.79891 / 3.785411784;
const millimole = 100.086;

export type HardnessClass = 'soft' | 'moderately hard' | 'hard' | 'very hard';

/**
 * Class of a hardness by the US survey.
 *
 * Symbols  hardness  scalar  kg/m3 of CaCO3
 * Returns  soft to 60, moderately hard to 120, hard to 180 mg/L, then very hard
 * Cost     O(1)
 * Source   US Geological Survey, hardness of water (memory)
 */
export const hardnessClass = (hardness: number): HardnessClass => {
  const milligrams = hardness * 1000;
  if (milligrams <= 60) return 'soft';
  if (milligrams <= 120) return 'moderately hard';
  return milligrams <= 180 ? 'hard' : 'very hard';
};

export const hardnessSheet = defineSheet({
  id: 'water/hardness',
  version: 1,
  inputs: { hardness: numberField('waterHardness', 'H', { least: 0, most: 20 }) },
  outputs: {
    asCarbonate: numberField('soluteConcentration', 'H'),
    germanDegrees: numberField('ratio', 'H_d'),
    frenchDegrees: numberField('ratio', 'H_f'),
    englishDegrees: numberField('ratio', 'H_e'),
    grainsPerUsGallon: numberField('ratio', 'H_g'),
    millimoles: numberField('ratio', 'H_m'),
    hardnessClass: choiceField<HardnessClass>('\\text{class}', [
      'soft',
      'moderately hard',
      'hard',
      'very hard',
    ]),
  },
  formula: [
    'H_d = \\frac{H}{17.848}, \\quad H_f = \\frac{H}{10}, \\quad H_e = \\frac{H}{14.254}, \\quad H_g = \\frac{H}{17.118}, \\quad H_m = \\frac{H}{100.09}, \\quad H \\text{ in mg/L of } \\mathrm{CaCO_3}',
  ],
  limits: [
    { code: 'HARDNESS_SCALE', broken: ({ hardness }) => hardness > 0.1 },
    { code: 'HARDNESS_CLASSES_DIFFER', broken: () => true },
  ],
  sources: [
    { title: 'IUPAC standard atomic weights', edition: '2021', place: 'Ca, C, O', mark: 'memory' },
    { title: 'definitions of grain and gallons', place: 'NIST SP 811, 2008', mark: 'memory' },
    { title: 'US Geological Survey, hardness of water', place: 'classes', mark: 'memory' },
  ],
  compute: ({ hardness }: { readonly hardness: number }) => {
    const milligrams = hardness * 1000;
    return {
      asCarbonate: hardness,
      germanDegrees: milligrams / german,
      frenchDegrees: milligrams / french,
      englishDegrees: milligrams / english,
      grainsPerUsGallon: milligrams / grainsPerUsGallon,
      millimoles: milligrams / millimole,
      hardnessClass: hardnessClass(hardness),
    };
  },
});

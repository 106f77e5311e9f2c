import type { SheetText } from '../sheet-text.ts';

export const hardnessText: SheetText = {
  en: {
    title: 'Hardness of water',
    about: 'A hardness in the degrees of several countries, and its class.',
    inputs: { hardness: 'Hardness' },
    outputs: {
      asCarbonate: 'As calcium carbonate',
      germanDegrees: 'German degrees, °dH',
      frenchDegrees: 'French degrees, °fH',
      englishDegrees: 'English degrees (grains in an imperial gallon)',
      grainsPerUsGallon: 'Grains in a US gallon',
      millimoles: 'Calcium and magnesium, mmol/L',
      hardnessClass: 'Class',
    },
    options: {
      hardnessClass: {
        soft: 'soft',
        'moderately hard': 'moderately hard',
        hard: 'hard',
        'very hard': 'very hard',
      },
    },
    notes: {
      HARDNESS_SCALE:
        'Over 100 mg/L with caustic and heat it scales jets and heaters: sequestrant, softener or acid rinse (common practice). Scaled jets lose their aim before their flow.',
      HARDNESS_CLASSES_DIFFER:
        'Class limits of 60, 120 and 180 mg/L are those of the US survey (memory); other countries draw them elsewhere.',
    },
  },
};

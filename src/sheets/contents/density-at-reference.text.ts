import type { SheetText } from '../sheet-text.ts';

export const densityAtReferenceText: SheetText = {
  en: {
    title: 'Density at the reference temperature',
    about:
      'Density of a product at the temperature at which its contents are judged, by its own cubic expansion, and what becomes of a volume.',
    inputs: {
      density: 'Density as measured',
      temperature: 'Temperature then',
      reference: 'Reference temperature',
      expansion: 'Cubic expansion of the product',
    },
    outputs: {
      referenceDensity: 'Density at the reference temperature',
      ratio: 'Volume at the reference temperature over volume as filled',
    },
    notes: {
      EXPANSION_STEP_FAR:
        'More than 15 K from the reference temperature: expansion changes with temperature. Measure the density nearer to it.',
    },
  },
};

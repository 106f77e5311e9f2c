import type { SheetText } from '../sheet-text.ts';

export const productAtReferenceText: SheetText = {
  en: {
    title: 'Product at its reference temperature',
    about:
      'Volume of a product at the temperature at which its contents are judged, from its densities at both temperatures. What is dosed warm is short when it is cold.',
    inputs: {
      volume: 'Volume as filled',
      density: 'Density at the temperature of filling',
      referenceDensity: 'Density at the reference temperature',
    },
    outputs: { atReference: 'Volume at the reference temperature' },
    notes: {
      REFERENCE_DENSITY_FAR:
        'The two densities differ by more than 5 %: no liquid of the trade expands so far between filling and judging.',
    },
  },
};

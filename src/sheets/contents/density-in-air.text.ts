import type { SheetText } from '../sheet-text.ts';

export const densityInAirText: SheetText = {
  en: {
    title: 'Density by weight in air',
    about:
      'What a litre of a liquid shows on the balance. A hydrometer or a table gives the true density; a flask weighed on the same balance gives this one already.',
    inputs: {
      density: 'True density',
      airDensity: 'Density of the air',
      weightDensity: 'Density of the weights of the balance',
    },
    outputs: { inAir: 'Density by weight in air' },
    notes: {},
  },
};

import type { SheetText } from '../sheet-text.ts';

export const trueDensityText: SheetText = {
  en: {
    title: 'True density',
    about: 'True density of a liquid from what a litre of it shows on the balance.',
    inputs: {
      inAir: 'Density by weight in air',
      airDensity: 'Density of the air',
      weightDensity: 'Density of the weights of the balance',
    },
    outputs: { density: 'True density' },
    notes: {},
  },
};

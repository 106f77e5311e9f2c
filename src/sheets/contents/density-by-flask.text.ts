import type { SheetText } from '../sheet-text.ts';

export const densityByFlaskText: SheetText = {
  en: {
    title: 'Density by a weighed flask',
    about:
      'Density of the product from a flask of known volume, weighed empty and full: as the balance shows it, and true.',
    inputs: {
      full: 'Flask full',
      empty: 'Flask empty and dry',
      volume: 'Volume of the flask at the temperature of the product',
      airDensity: 'Density of the air',
      weightDensity: 'Density of the weights of the balance',
    },
    outputs: { inAir: 'Density by weight in air', density: 'True density' },
    notes: { FLASK_ODD: 'Lighter than alcohol or heavier than syrup: look again at the weighings.' },
    problems: { FLASK_EMPTY_OVER_FULL: '{path}: the empty flask is not lighter than the full one.' },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const volumeByWeighingText: SheetText = {
  en: {
    title: 'Volume by weighing',
    about:
      'Volume of a liquid from what the balance shows for it, with the buoyancy of the air. It holds at the temperature at which the density is given.',
    inputs: {
      mass: 'Reading for the liquid alone',
      density: 'Density of the liquid (true density, at the temperature wanted)',
      airDensity: 'Density of the air',
      weightDensity: 'Density of the weights of the balance',
    },
    outputs: {
      volume: 'Volume',
      trueMass: 'True mass of the liquid',
      buoyancy: 'What buoyancy hides, of the reading',
    },
    notes: {},
  },
};

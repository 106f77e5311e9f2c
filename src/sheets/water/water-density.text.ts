import type { SheetText } from '../sheet-text.ts';

export const waterDensityText: SheetText = {
  en: {
    title: 'Density of water',
    about: 'Density of liquid water at 0.1 MPa from its temperature.',
    inputs: { temperature: 'Temperature' },
    outputs: { density: 'Density' },
    notes: {},
  },
};

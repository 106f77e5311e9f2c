import type { SheetText } from '../sheet-text.ts';

export const saturationText: SheetText = {
  en: {
    title: 'Saturation pressure of water vapour',
    about: 'Pressure and mass of the vapour that air of a temperature can hold at most.',
    inputs: { temperature: 'Temperature', surface: 'Saturated over' },
    outputs: { pressure: 'Saturation pressure', vapourDensity: 'Mass of vapour in a volume' },
    notes: {
      SATURATION_SUPERCOOLED:
        'Over supercooled water: below 0 °C the equation is carried on beyond its fit, and ice holds less.',
    },
    options: {
      surface: { 'ice below freezing': 'ice below 0.01 °C, water above', water: 'water, also supercooled' },
    },
  },
};

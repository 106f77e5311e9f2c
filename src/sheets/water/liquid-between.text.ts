import type { SheetText } from '../sheet-text.ts';

export const liquidBetweenText: SheetText = {
  en: {
    title: 'Liquid between two known temperatures',
    about: 'Density and viscosity of a product at a temperature between two at which they are known.',
    inputs: {
      temperature: 'temperature',
      lowTemperature: 'lower known temperature',
      highTemperature: 'higher known temperature',
      lowDensity: 'density at the lower',
      highDensity: 'density at the higher',
      lowViscosity: 'viscosity at the lower',
      highViscosity: 'viscosity at the higher',
    },
    outputs: { density: 'density', viscosity: 'viscosity' },
    notes: {
      LIQUID_OUTSIDE_POINTS: 'Outside the known temperatures: the nearest known value was taken.',
    },
    problems: { LIQUID_POINTS: 'The higher temperature lies below the lower one.' },
  },
};

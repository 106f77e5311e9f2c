import type { SheetText } from '../sheet-text.ts';

export const gravitySupplyText: SheetText = {
  en: {
    title: 'Gravity tank',
    about: 'Pressure under a standing surface, and how fast the surface falls.',
    inputs: {
      surfaceHeight: 'Height of the surface',
      height: 'Height of the point',
      surfacePressure: 'Pressure over the surface',
      density: 'Density',
      planArea: 'Plan area of the tank',
      flow: 'Flow drawn',
      makeUp: 'Make-up flow',
    },
    outputs: { pressure: 'Pressure at the point', fall: 'Fall of the surface' },
    notes: { GRAVITY_BELOW_ATMOSPHERE: 'Below the pressure of the air at this point: air will be drawn in.' },
  },
};

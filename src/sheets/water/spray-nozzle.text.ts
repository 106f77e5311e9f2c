import type { SheetText } from '../sheet-text.ts';

export const sprayNozzleText: SheetText = {
  en: {
    title: 'Spray nozzle',
    about: 'Flow of a spray nozzle at another pressure than that of its paper.',
    inputs: {
      ratedFlow: 'Flow of its paper',
      ratedPressure: 'Pressure of its paper',
      pressure: 'Pressure at the nozzle',
      exponent: 'Exponent: 0.50 flat and hollow cone, 0.46 full cone, 0.44 wide full cone',
      density: 'Density',
    },
    outputs: { flow: 'Flow' },
    notes: {
      SPRAY_FAR: 'Further than a factor of three from the pressure of its paper: pattern and flow change.',
    },
  },
};

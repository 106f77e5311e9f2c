import type { SheetText } from '../sheet-text.ts';

export const hydrantPitotText: SheetText = {
  en: {
    title: 'Hydrant flow by pitot tube',
    about: 'Flow from an open hydrant from the pressure of its jet.',
    inputs: {
      pitotPressure: 'Pressure at the pitot tube',
      bore: 'Bore of the outlet',
      coefficient: 'Coefficient of the outlet',
      density: 'Density',
    },
    outputs: { flow: 'Flow' },
    notes: { PITOT_WEAK: 'Under 10 psi (0.69 bar) a pitot reading is uncertain.' },
  },
};

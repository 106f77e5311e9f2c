import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const pressureVesselText: SheetText = {
  en: {
    title: 'Draw of a pressure vessel',
    about: 'Volume that a vessel with a gas cushion gives between two pressures. All pressures absolute.',
    inputs: {
      vessel: 'Volume of the vessel',
      preCharge: 'Pre-charge',
      lowest: 'Lowest pressure',
      highest: 'Highest pressure',
    },
    outputs: { draw: 'Volume drawn' },
    notes: { PRESSURE_CAUTION: notes.PRESSURE_CAUTION },
    problems: {
      VESSEL_PRE_CHARGE: 'The pre-charge must be no higher than the lowest pressure.',
      VESSEL_BAND: 'The highest pressure must be no lower than the lowest.',
    },
  },
};

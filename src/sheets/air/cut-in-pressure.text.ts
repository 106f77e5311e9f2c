import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const cutInPressureText: SheetText = {
  en: {
    title: 'Cut-in of a compressor',
    about: 'Pressure at which a compressor loads that unloads at its delivery pressure.',
    inputs: { cutOut: 'Pressure at which it unloads', band: 'Band between loading and unloading' },
    outputs: { cutIn: 'Pressure at which it loads' },
    notes: {
      BAND_USUAL:
        'A band of 1 bar (15 psi) between loading and unloading is common practice: ask for the setting.',
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const switchingBandText: SheetText = {
  en: {
    title: 'Switching band of a compressor',
    about: 'Pressure between loading and unloading of a compressor.',
    inputs: { cutOut: 'Pressure at which it unloads', cutIn: 'Pressure at which it loads' },
    outputs: { band: 'Band between loading and unloading' },
    notes: {},
    problems: {
      BAND_EMPTY: '{path}: it loads at "{given}", which is not below the pressure at which it unloads.',
    },
  },
};

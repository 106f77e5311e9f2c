import type { SheetText } from '../sheet-text.ts';

export const pumpBandText: SheetText = {
  en: {
    title: 'Band between start and stop of a pump',
    about:
      'Volume between start and stop level so that the pump never starts more often than its motor allows.',
    inputs: { pumpFlow: 'Flow of the pump', starts: 'Starts allowed' },
    outputs: { volume: 'Volume of the band' },
    notes: {},
  },
};

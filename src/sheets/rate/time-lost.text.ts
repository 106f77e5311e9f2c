import type { SheetText } from '../sheet-text.ts';

export const timeLostText: SheetText = {
  en: {
    title: 'Time lost of a shift',
    about: 'What time that was lost to one cause is of a shift, and how many bottles it is worth.',
    inputs: {
      duration: 'Duration of the shift',
      lost: 'Time lost to it',
      setRate: 'Rate while nothing stops',
    },
    outputs: {
      share: 'Share of the shift',
      left: 'Availability, were nothing else lost',
      bottles: 'Bottles that were not made in it',
    },
    notes: {
      LOST_AT_SET_RATE:
        'The bottles are those of the set rate. Taking the cause away gives fewer where something else then holds the line: what one change is worth says how many.',
    },
    problems: { LOST_OVER_SHIFT: '{path}: "{given}" is more than the whole shift. Accepted: {allowed}.' },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const accumulationTimeText: SheetText = {
  en: {
    title: 'Accumulation time',
    about: 'How long a station may stop before the one beside it has no bottle, or no room for one.',
    inputs: {
      bottles: 'Bottles or free places between them',
      rate: 'Rate of the station that runs on',
    },
    outputs: { time: 'Accumulation time' },
    notes: {
      ACCUMULATION_FULL:
        'Counts on bottles (or room) being there when the stop begins. Soon after another stop there is less.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const reachThroughText: SheetText = {
  en: {
    title: 'Reach through an opening',
    about: 'Least distance of a danger behind a slot, a square or a round opening of a guard.',
    inputs: { opening: 'Opening', width: 'Width, side or diameter', length: 'Length of a slot' },
    outputs: { reach: 'Reached through' },
    options: { opening: { slot: 'slot', square: 'square', round: 'round' } },
    notes: {
      ...notesOf('CAUTION_GUARDING'),
      REACH_FROM_14: 'For people of 14 years and older; where children come the table is another.',
      REACH_THUMB: 'So short a slot stops the thumb: 200 mm.',
      REACH_LOW_GUARDS:
        'Guards lower than 1000 mm do not count, lower than 1400 mm only with more than the guard.',
    },
  },
};

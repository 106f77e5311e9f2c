import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const receiverLeastText: SheetText = {
  en: {
    title: 'Lowest pressure of a receiver',
    about: 'How far the pressure of a receiver may fall before the drop has too little.',
    inputs: {
      receiver: 'Pressure of the receiver',
      arrives: 'Pressure that arrives at the drop',
      needed: 'Pressure that the drop needs',
    },
    outputs: { least: 'Lowest pressure of the receiver' },
    notes: {
      RECEIVER_DROP_SHORT: 'The drop has too little already: no receiver mends that.',
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
  },
};

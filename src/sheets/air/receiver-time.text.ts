import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';
import { receiverNotes, receiverProblems } from './receiver.text.ts';

export const receiverTimeText: SheetText = {
  en: {
    title: 'How long a receiver lasts',
    about: 'Time in which a receiver falls through a band of pressure under a draw.',
    inputs: {
      volume: 'Receiver',
      high: 'Pressure before',
      low: 'Pressure after',
      demand: 'Draw',
      supply: 'Delivery of the compressor meanwhile',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature of the air in the receiver',
    },
    outputs: { time: 'Time' },
    notes: {
      RECEIVER_DROP_TO_MACHINE: receiverNotes.RECEIVER_DROP_TO_MACHINE,
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      AIR_BELOW_VACUUM: problems.AIR_BELOW_VACUUM,
      RECEIVER_BAND: receiverProblems.RECEIVER_BAND,
      RECEIVER_NEVER_FALLS: receiverProblems.RECEIVER_NEVER_FALLS,
    },
  },
};

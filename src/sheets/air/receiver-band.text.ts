import type { SheetText } from '../sheet-text.ts';
import { problems } from './notes.text.ts';
import { receiverNotes, receiverProblems } from './receiver.text.ts';

export const receiverBandText: SheetText = {
  en: {
    title: 'Receiver for a steady draw',
    about: 'Volume that carries a draw for a time while the pressure falls through a known band.',
    inputs: {
      time: 'Time',
      demand: 'Draw',
      supply: 'Delivery of the compressor meanwhile',
      high: 'Pressure before',
      low: 'Lowest pressure allowed',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature of the air in the receiver',
    },
    outputs: { volume: 'Receiver' },
    notes: receiverNotes,
    problems: { AIR_BELOW_VACUUM: problems.AIR_BELOW_VACUUM, RECEIVER_BAND: receiverProblems.RECEIVER_BAND },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const compressorStartsText: SheetText = {
  en: {
    title: 'Starts of a compressor',
    about:
      'How often a compressor loads between cut-in and cut-out, and the receiver that keeps it under what is allowed.',
    inputs: {
      receiver: 'Receiver',
      delivery: 'Delivery of the compressor, normal air',
      demand: 'Demand',
      band: 'Cut-out less cut-in',
      allowed: 'Starts allowed',
    },
    outputs: {
      loadShare: 'Load',
      starts: 'Starts',
      worstStarts: 'Starts at half load, the worst',
      volumeNeeded: 'Receiver needed at this demand',
      volumeNeededWorst: 'Receiver needed at half load',
    },
    notes: {
      COMPRESSOR_NEVER_UNLOADS: 'The demand is all that the compressor gives, or more: it never unloads.',
      COMPRESSOR_STARTS_MANY: 'It starts more often than is allowed.',
      COMPRESSOR_STARTS_WORST: 'At half load it would start more often than is allowed.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
  },
};

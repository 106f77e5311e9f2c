import { notes } from './notes.text.ts';

/** Sentences that the sheets of receivers share, in English. */
export const receiverNotes = {
  RECEIVER_NOT_NEEDED: 'The compressor keeps up with the draw: no receiver is needed to carry it.',
  RECEIVER_DROP_TO_MACHINE:
    'The lower pressure is at the receiver: add what is lost on the way to the machine.',
  RECEIVER_RULES:
    'Rules of thumb beside it: 1 US gal for each cfm (read), 4 US gal for each hp (a vendor), 3 to 4 US gal for each cfm of a load and unload screw (memory).',
  AIR_REFERENCE: notes.AIR_REFERENCE,
  CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
} as const;

export const receiverProblems = {
  RECEIVER_BAND: 'The high pressure is not above the low one: the receiver has no band to give.',
  RECEIVER_NEVER_FALLS:
    'The compressor gives as much as is drawn or more: the pressure never falls, so there is no time.',
  RECEIVER_MEAN_OVER:
    'The mean of the pattern is over the delivery: no receiver is large enough, it only buys time.',
} as const;

import type { SheetText } from '../sheet-text.ts';

export const recoveryTimeText: SheetText = {
  en: {
    title: 'Recovery of a buffer after a stop',
    about: 'How long the faster of two stations must run without a stop to make good what a stop has cost.',
    inputs: {
      bottles: 'Bottles to make good',
      faster: 'Rate of the faster station',
      slower: 'Rate of the slower station',
    },
    outputs: { time: 'Recovery time' },
    notes: {},
    problems: {
      BUFFER_NEVER_RECOVERS:
        '{path}: at {given} a second it is no faster than the other station, so that the buffer never recovers. Accepted: {allowed}.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const fillTimeLeftText: SheetText = {
  en: {
    title: 'Time left for the fill',
    about: 'What an agreed rate leaves for the fill after the other steps of the loop in which it stands.',
    inputs: {
      rate: 'Agreed rate',
      bottles: 'Bottles in a fill',
      otherSteps: 'Other steps round the loop',
      blocks: 'Blocks that the loop spans',
      fills: 'Fills in a block',
      fillsInLoop: 'Fills that the loop passes through',
    },
    outputs: { left: 'Time left for the fill' },
    notes: {
      RATE_NO_TIME_LEFT:
        'The other steps alone take all the time that this rate allows: no fill is short enough.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const meanOverflowText: SheetText = {
  en: {
    title: 'Overflow of a bottle',
    about: 'What the lanes give above the fill level, on the mean: it runs over and is lost or caught.',
    inputs: { filled: 'filled by each lane', level: 'volume at the fill level' },
    outputs: { overflow: 'overflow a bottle' },
    notes: { OVERFLOW_SHORT_LANE: 'One lane or more does not reach the level.' },
  },
};

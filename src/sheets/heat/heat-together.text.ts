import type { SheetText } from '../sheet-text.ts';

export const heatTogetherText: SheetText = {
  en: {
    title: 'Several heat flows together',
    about: 'Heat of several baths, heaters or surfaces together.',
    inputs: { heats: 'Heat of each' },
    outputs: { heat: 'Heat of all' },
    notes: {},
  },
};

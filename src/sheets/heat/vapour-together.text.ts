import type { SheetText } from '../sheet-text.ts';

export const vapourTogetherText: SheetText = {
  en: {
    title: 'Moisture of several baths',
    about: 'Water that several open baths give to the air together.',
    inputs: { flows: 'Moisture of each' },
    outputs: { flow: 'Moisture of all' },
    notes: {},
  },
};

import type { SheetText } from '../sheet-text.ts';

export const flowsTogetherText: SheetText = {
  en: {
    title: 'Several flows together',
    about: 'Flow of several streams that run at the same time.',
    inputs: { flows: 'Flow of each' },
    outputs: { flow: 'Flow of all' },
    notes: {},
  },
};

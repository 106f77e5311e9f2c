import type { SheetText } from '../sheet-text.ts';

export const compressorsTogetherText: SheetText = {
  en: {
    title: 'Several compressors together',
    about: 'Free air of several compressors alike that run together.',
    inputs: { freeAir: 'Free air of one', count: 'Compressors that run' },
    outputs: { together: 'Free air of all' },
    notes: { COMPRESSORS_ALL_RUN: 'All of them run: with one in reserve, or in service, there is less.' },
  },
};

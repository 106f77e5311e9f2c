import type { SheetText } from '../sheet-text.ts';
import { problemsOf } from './notes.text.ts';

export const indexFromRateText: SheetText = {
  en: {
    title: 'Index at a rate',
    about: 'Index of an indexing machine that makes a rate with so many lanes.',
    inputs: { lanes: 'Lanes, bottles in an index', rate: 'Bottle rate' },
    outputs: { index: 'Index' },
    notes: {
      INDEX_NOMINAL:
        'Nominal: after a hold the line catches up, so the shortest contact falls just behind a hold. Judge contact on a log of real indexes.',
    },
    problems: problemsOf('HYGIENE_NOT_WHOLE'),
  },
};

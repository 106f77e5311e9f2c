import type { SheetText } from '../sheet-text.ts';
import { categoryNotes, categoryOptions, categoryProblemWords } from './category.text.ts';
import { notesOf } from './notes.text.ts';

export const failureRateText: SheetText = {
  en: {
    title: 'Dangerous failures of a control',
    about: 'PFHd of a control by category, coverage and the mean time to a dangerous failure of a channel.',
    inputs: {
      category: 'Category',
      coverage: 'Average diagnostic coverage',
      lifetime: 'Mean time to a dangerous failure of a channel',
    },
    outputs: { row: 'Row of the table', rate: 'Dangerous failures', level: 'Performance level of the rate' },
    options: categoryOptions,
    notes: {
      ...notesOf('CAUTION_GUARDING', 'LEVEL_NOT_NUMBER_ALONE'),
      ...categoryNotes,
      FAILURE_TABLE_INFORMATIVE:
        'An informative table, read in a transcription that was never held against a bought copy. The table by classes comes first.',
      FAILURE_ROW_RECALLED: 'The row of {years} years is from memory: the transcription is spoilt there.',
      FAILURE_ROW_DOUBTFUL:
        'This figure lies off the slope of its column by over a hundredth: perhaps an error of the transcription.',
    },
    problems: categoryProblemWords,
  },
};

import type { SheetText } from '../sheet-text.ts';
import { coverageClassWords } from './average-coverage.text.ts';
import { categoryNotes, categoryOptions, categoryProblemWords } from './category.text.ts';
import { notesOf } from './notes.text.ts';

export const simplifiedLevelText: SheetText = {
  en: {
    title: 'Performance level by classes',
    about:
      'Performance level of a control by the simplified table of category, coverage and mean time to a dangerous failure.',
    inputs: {
      category: 'Category',
      coverage: 'Average diagnostic coverage',
      lifetime: 'Mean time to a dangerous failure of a channel',
    },
    outputs: {
      coverageClass: 'Class of coverage',
      lifetimeClass: 'Class of the mean time',
      level: 'Performance level',
    },
    options: {
      ...categoryOptions,
      coverageClass: coverageClassWords,
      lifetimeClass: { low: 'low', medium: 'medium', high: 'high' },
    },
    notes: { ...notesOf('CAUTION_GUARDING', 'LEVEL_NOT_NUMBER_ALONE'), ...categoryNotes },
    problems: {
      ...categoryProblemWords,
      CATEGORY_NO_FIELD:
        '{path}: the table has no field for category B with so long a time; category 1 may be meant. Allowed: {allowed}.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { categoryOptions } from './category.text.ts';
import { notesOf } from './notes.text.ts';

export const levelProblemWords = {
  LEVEL_NONE: '{path}: so many dangerous failures that no performance level is left. Allowed: {allowed}.',
} as const;

export const levelOfRateText: SheetText = {
  en: {
    title: 'Performance level of a rate of failures',
    about: 'Performance level in whose band the dangerous failures of a control lie.',
    inputs: { rate: 'Dangerous failures' },
    outputs: { level: 'Performance level' },
    options: { level: categoryOptions.level },
    notes: {
      ...notesOf('CAUTION_GUARDING', 'LEVEL_NOT_NUMBER_ALONE'),
      LEVEL_BELOW_BANDS: 'Below the bands; there is no level above e (memory).',
    },
    problems: levelProblemWords,
  },
};

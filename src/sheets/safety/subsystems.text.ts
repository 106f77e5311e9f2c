import type { SheetText } from '../sheet-text.ts';
import { categoryOptions } from './category.text.ts';
import { levelProblemWords } from './level-of-rate.text.ts';
import { notesOf } from './notes.text.ts';

export const subsystemsText: SheetText = {
  en: {
    title: 'Subsystems in series',
    about:
      'Dangerous failures and performance level of a function from those of its sensor, logic and output.',
    inputs: { rates: 'Dangerous failures of each subsystem', lowest: 'Lowest level of a subsystem' },
    outputs: { rate: 'Dangerous failures together', ofSum: 'Level of the sum', level: 'Performance level' },
    options: { lowest: categoryOptions.level, ofSum: categoryOptions.level, level: categoryOptions.level },
    notes: {
      ...notesOf('CAUTION_GUARDING', 'LEVEL_NOT_NUMBER_ALONE'),
      LEVEL_HELD_BY_LOWEST: 'Held by the lowest subsystem, not by the sum.',
    },
    problems: levelProblemWords,
  },
};

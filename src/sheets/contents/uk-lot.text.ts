import type { SheetText } from '../sheet-text.ts';
import { averageLotWords } from './average-lot.text.ts';
import { lotNotes } from './lot-notes.text.ts';

export const ukLotText: SheetText = {
  en: {
    title: 'Lot under the UK average system',
    about:
      'Whether a batch is accepted under the packaged goods regulations of the United Kingdom: by its single packages and by its mean.',
    inputs: averageLotWords.inputs,
    outputs: averageLotWords.outputs,
    options: {
      ...averageLotWords.verdicts,
      plan: {
        single: 'single, packages stay closed',
        double: 'double, packages stay closed',
        destructive: 'packages are opened',
      },
    },
    notes: {
      ...averageLotWords.notes,
      UK_DEFICIENCY_MEMORY: lotNotes.UK_DEFICIENCY_MEMORY,
      UK_PLAN_MEMORY:
        'The numbers of this plan are those of the directive; the table of the regulations was not read. The single plan was.',
    },
    problems: averageLotWords.problems,
  },
};

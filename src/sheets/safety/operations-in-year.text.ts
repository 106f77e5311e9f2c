import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const operationsInYearText: SheetText = {
  en: {
    title: 'Operations in a year',
    about: 'How often a switch, a valve or a contactor operates in a year.',
    inputs: { days: 'Days in a year', dailyTime: 'Time run in a day', cycle: 'Time between two operations' },
    outputs: { operations: 'Operations in a year' },
    notes: {
      ...notesOf('CAUTION_GUARDING'),
      OPERATIONS_OF_THE_PART:
        'Of the part, not of the line: a valve that moves twice in an index operates twice, a guard switch when it is opened.',
    },
  },
};

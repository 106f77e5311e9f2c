import type { SheetText } from '../sheet-text.ts';
import { lotNotes, lotProblems } from './lot-notes.text.ts';

export const tolerableDeficiencyText: SheetText = {
  en: {
    title: 'Tolerable deficiency',
    about: 'How much less than its label a single package may hold under a rule, T; and twice of it.',
    inputs: { rule: 'Rule', quantity: 'Label' },
    outputs: {
      deficiency: 'Tolerable deficiency',
      least: 'Defective below',
      barredBelow: 'Must not be sold below',
    },
    options: {
      rule: {
        'OIML R 87': 'OIML R 87',
        'EU average system': 'EU average system',
        'UK average system': 'UK average system',
      },
    },
    notes: {
      UK_DEFICIENCY_MEMORY: lotNotes.UK_DEFICIENCY_MEMORY,
      RULE_AUTHORITY: lotNotes.RULE_AUTHORITY,
    },
    problems: { LABEL_NOT_REACHED: lotProblems.LABEL_NOT_REACHED },
  },
};

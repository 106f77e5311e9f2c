import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const partLifetimeText: SheetText = {
  en: {
    title: 'Mean time to a dangerous failure of a part',
    about: 'MTTFd of a part that wears by operations, from its B10d, and when it must be replaced.',
    inputs: {
      operations: 'Operations until one in ten has failed',
      counted: 'Failures counted in it',
      inYear: 'Operations in a year',
    },
    outputs: {
      dangerous: 'Operations until one in ten has failed dangerously',
      lifetime: 'Mean time to a dangerous failure',
      replacement: 'Replaced after',
    },
    options: { counted: { dangerous: 'dangerous ones: B10d', all: 'all: B10' } },
    notes: {
      ...notesOf('CAUTION_GUARDING'),
      PART_REPLACED_EARLY:
        'Worn before the 20 years for which a control is meant: its replacement goes into the instructions, with its date.',
      PART_HALF_DANGEROUS: 'Only all failures are known: half of them are taken as dangerous.',
      PART_FROM_ITS_MAKER: 'B10d as its maker gives it, for this load and fluid.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const bondLimitText: SheetText = {
  en: {
    title: 'Most that a bond may have',
    about:
      'Resistance that a protective bond may have between its ends, by its copper and contacts and by the rule set that holds.',
    inputs: {
      rule: 'Rule set',
      length: 'Length between the points',
      area: 'Section of the conductor',
      temperature: 'Temperature of the conductor',
      contacts: 'Allowed to the contacts',
    },
    options: { rule: { 'iec-60204-1': 'IEC 60204-1', 'nfpa-79': 'NFPA 79' } },
    outputs: { conductor: 'Of the conductor', most: 'At most' },
    notes: {
      ...notesOf('CAUTION_GUARDING'),
      BOND_TEST_CURRENT:
        'By 0.2 to 10 A from a source of 24 V at most that is parted from the supply; by a qualified person, isolated and locked.',
      BOND_LONG_FOR_US:
        'The copper alone has more than NFPA 79 allows (memory): a thicker or shorter bond is wanted.',
    },
  },
};

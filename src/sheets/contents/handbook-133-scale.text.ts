import type { SheetText } from '../sheet-text.ts';
import { lotNotes } from './lot-notes.text.ts';

export const handbook133ScaleText: SheetText = {
  en: {
    title: 'Scale for a lot under NIST Handbook 133',
    about:
      'Whether a scale is fine enough for a lot under NIST Handbook 133: its division against a sixth of the maximum allowable variation, and how far it may be off at the load.',
    inputs: {
      variation: 'Maximum allowable variation, as weight',
      division: 'Division of the scale',
      capacity: 'Capacity of the scale',
      load: 'Load: gross of a package',
      scaleClass: 'Class of the scale',
    },
    outputs: {
      fitness: 'The scale',
      largestDivision: 'Largest division',
      divisions: 'Divisions of the scale (at least 100)',
      tolerance: 'Acceptance tolerance at the load',
    },
    options: {
      scaleClass: { II: 'II', III: 'III' },
      fitness: { fits: 'is fine enough', 'does not fit': 'is not fine enough' },
    },
    notes: { RULE_AUTHORITY: lotNotes.RULE_AUTHORITY },
  },
};

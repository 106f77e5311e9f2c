import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const coverageClassWords = { none: 'none', low: 'low', medium: 'medium', high: 'high' } as const;

export const averageCoverageText: SheetText = {
  en: {
    title: 'Average diagnostic coverage',
    about: 'Share of the dangerous failures of a control that its tests find, and its class.',
    inputs: { shares: 'Coverage of each part', parts: 'Mean time to a dangerous failure of each' },
    outputs: { coverage: 'Average coverage', coverageClass: 'Class' },
    options: { coverageClass: coverageClassWords },
    notes: {
      ...notesOf('CAUTION_GUARDING'),
      COVERAGE_ALL_PARTS:
        'Every part of every channel counts, those without a test with 0; only excluded faults are left out.',
    },
  },
};

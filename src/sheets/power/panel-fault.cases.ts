import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const panelFaultCases: readonly SheetCase[] = [
  {
    name: 'a panel of 5 kA on a board of 20 kA: 15 kA short',
    source: arithmetic,
    inputs: { fault: 20000, motors: 0, rating: 5000 },
    outputs: { available: 20000, margin: -15000, share: 4 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
    notes: ['CAUTION_ELECTRICAL', 'PANEL_RATING_EXCEEDED'],
  },
  {
    name: '6637 A and running motors of 61.5 A: 6883 A',
    source: {
      title: 'formula page on fault currents: motors add four times their full-load current',
      place: 'rule read, figures by hand',
      mark: 'computed',
    },
    inputs: { fault: 6637, motors: 61.5, rating: 10000 },
    outputs: { available: 6883, margin: 3117 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
    notes: ['PANEL_WEAKEST_PART'],
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const motorsInputCases: readonly SheetCase[] = [
  {
    name: '1 hp at 74.6 % takes 1 kW; half the time of 3 kW at 75 % is 2 kW',
    source: arithmetic,
    inputs: { shaftPowers: [745.7, 3000], efficiencies: [0.7457, 0.75], duties: [1, 0.5] },
    outputs: { power: 3000 },
    notes: ['CAUTION_ELECTRICAL'],
    tolerance: { relative: 1e-12, reason: 'exact figures' },
  },
];

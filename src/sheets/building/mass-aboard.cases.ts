import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const massAboardCases: readonly SheetCase[] = [
  {
    name: '2400 kg as it stands and 1800 kg as it travels are 600 kg of water',
    source: arithmetic,
    inputs: { full: 2400, empty: 1800 },
    outputs: { mass: 600 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
  {
    name: 'filled it cannot be lighter than drained: nothing is taken',
    source: arithmetic,
    inputs: { full: 1700, empty: 1800 },
    outputs: { mass: 0 },
    tolerance: { absolute: 1e-9, reason: 'nothing' },
    notes: ['FULL_UNDER_EMPTY', 'CAUTION_STRUCTURE'],
  },
];

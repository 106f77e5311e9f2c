import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, taktExample } from './sources.ts';

export const agreedPeriodCases: readonly SheetCase[] = [
  {
    name: 'takt example: 80 units in 820 min are one every 10.25 min',
    source: taktExample,
    inputs: { rate: 80 / (820 * 60), bottles: 1 },
    outputs: { period: 10.25 * 60 },
    tolerance: { relative: 1e-12, reason: 'one division' },
    notes: ['AGREED_PERIOD_NO_STOP'],
  },
  {
    name: '675 bottles in an hour by rows of three: a row every 16 s',
    source: arithmetic,
    inputs: { rate: 675 / 3600, bottles: 3 },
    outputs: { period: 16 },
    tolerance: { relative: 1e-12, reason: 'one division' },
  },
];

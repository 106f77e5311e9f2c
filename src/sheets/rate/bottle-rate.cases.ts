import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, lineRecursion, taktExample } from './sources.ts';

const hour = 3600;
const exact = { relative: 1e-12, reason: 'one division' };

export const bottleRateCases: readonly SheetCase[] = [
  {
    name: 'takt example: one unit in 10.25 min is 80 in 820 min',
    source: taktExample,
    inputs: { bottles: 1, period: 615 },
    outputs: { rate: 80 / (820 * 60) },
    tolerance: exact,
    notes: ['RATE_CEILING'],
  },
  {
    name: 'three bottles in 16 s are 675 in an hour',
    source: arithmetic,
    inputs: { bottles: 3, period: 16 },
    outputs: { rate: 675 / hour },
    tolerance: exact,
  },
  {
    name: 'a line of three lanes held at 19 s by its interlock: 568.421 in an hour',
    source: lineRecursion,
    inputs: { bottles: 3, period: 19 },
    outputs: { rate: 568.421 / hour },
    tolerance: { relative: 1e-6, reason: 'six printed digits' },
  },
];

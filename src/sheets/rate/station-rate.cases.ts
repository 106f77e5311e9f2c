import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, lineRecursion } from './sources.ts';

const exact = { relative: 1e-12, reason: 'one product and one division' };

export const stationRateCases: readonly SheetCase[] = [
  {
    name: 'one head, three bottles of 5.5 s, never blocked: the line runs at 16.5 s, 654.545 in an hour',
    source: lineRecursion,
    inputs: { heads: 1, perBottle: 5.5, lanes: 3 },
    outputs: { rate: 654.545 / 3600, setTime: 16.5 },
    tolerance: { relative: 1e-6, reason: 'six printed digits' },
    notes: ['RATE_CEILING'],
  },
  {
    name: 'two heads, four bottles of 5 s: two turns, 10 s, two bottles every 5 s',
    source: arithmetic,
    inputs: { heads: 2, perBottle: 5, lanes: 4 },
    outputs: { rate: 0.4, setTime: 10 },
    tolerance: exact,
  },
  {
    name: 'four heads, six bottles of 3 s: the second turn has two heads idle, 1 a second instead of 4/3',
    source: arithmetic,
    inputs: { heads: 4, perBottle: 3, lanes: 6 },
    outputs: { rate: 1, setTime: 6 },
    tolerance: exact,
    notes: ['STATION_HEADS_IDLE'],
  },
];

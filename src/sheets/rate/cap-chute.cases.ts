import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

const chute = { low: 20, high: 80, feed: 40 / 60, use: 675 / 3600 } as const;

export const capChuteCases: readonly SheetCase[] = [
  {
    name: 'sorter of 40 a minute, 675 bottles an hour, 60 caps between the sensors: 125.217 s, 320 s, 8.0859 starts an hour',
    source: arithmetic,
    inputs: { ...chute, runUp: 5 },
    outputs: {
      refill: 125.217,
      drain: 320,
      duty: 0.28125,
      starts: 8.0859 / 3600,
      reserve: 320 / 3,
      reserveNeeded: 0.9375,
    },
    tolerance: { relative: 5e-6, reason: 'five printed digits' },
  },
  {
    name: 'two minutes of run-up want 22.5 caps below the low sensor; 20 are short',
    source: arithmetic,
    inputs: { ...chute, runUp: 120 },
    outputs: { reserveNeeded: 22.5 },
    tolerance: { relative: 1e-12, reason: 'one product' },
    notes: ['CHUTE_RESERVE_SHORT'],
  },
];

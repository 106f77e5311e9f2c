import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const flowLeftCases: readonly SheetCase[] = [
  {
    name: 'of 24 L/min of which 18 L/min run on, 6 L/min are left',
    source: arithmetic,
    inputs: { comesIn: 24 / 60_000, runsOn: [18 / 60_000] },
    outputs: { left: 1e-4 },
    tolerance: { relative: 1e-12, reason: 'a difference' },
  },
  {
    name: 'where more runs on than comes in, nothing is left',
    source: arithmetic,
    inputs: { comesIn: 1e-4, runsOn: [1e-4, 1e-4] },
    outputs: { left: 0 },
    tolerance: { absolute: 1e-15, reason: 'nothing' },
    notes: ['FLOW_MORE_RUNS_ON'],
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

const exact = { relative: 1e-12, reason: 'one product' };

export const meanDrawCases: readonly SheetCase[] = [
  {
    name: '1,050 bottles an hour of 2 L draw 35 L/min',
    source: arithmetic,
    inputs: { rate: 1050 / 3600, volume: 0.002 },
    outputs: { flow: 0.035 / 60 },
    tolerance: exact,
    notes: ['DRAW_PEAK_IS_HIGHER'],
  },
  {
    name: '675 bottles an hour of 0.75 L draw 506.25 L/h',
    source: arithmetic,
    inputs: { rate: 675 / 3600, volume: 0.00075 },
    outputs: { flow: 0.50625 / 3600 },
    tolerance: exact,
  },
];

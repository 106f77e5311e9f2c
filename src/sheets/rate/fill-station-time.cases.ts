import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, lineRecursion } from './sources.ts';

export const fillStationTimeCases: readonly SheetCase[] = [
  {
    name: 'transfer 2 s, fill 13 s, drip 1 s, discharge 2 s: without an interlock the line runs at 18 s',
    source: lineRecursion,
    inputs: { travelIn: 2, lift: 0, lag: 0, filling: 13, drip: 1, lower: 0, clearOut: 2 },
    outputs: { time: 18 },
    tolerance: { relative: 1e-12, reason: 'additions' },
  },
  {
    name: 'all seven parts, each counted once: 12 s',
    source: arithmetic,
    inputs: { travelIn: 1.2, lift: 0.8, lag: 0.25, filling: 6.4, drip: 1, lower: 0.7, clearOut: 1.65 },
    outputs: { time: 12 },
    tolerance: { relative: 1e-12, reason: 'additions' },
  },
];

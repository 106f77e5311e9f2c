import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const runDryTimeCases: readonly SheetCase[] = [
  {
    name: '300 L stored, 1.5 L/s drawn, 1.2 L/s made up: 1 000 s',
    source: arithmetic,
    inputs: { volume: 0.3, draw: 0.0015, makeUp: 0.0012 },
    outputs: { time: 1000 },
    tolerance: { relative: 1e-9, reason: 'rounding of doubles, cancelled' },
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { hour } from './bounds.ts';
import { byHand } from './sources.ts';

const perHour = (...rates: readonly number[]) => rates.map((rate) => rate / hour);
const exact = { relative: 1e-9, reason: 'exact figures' } as const;

export const subsystemsCases: readonly SheetCase[] = [
  {
    name: 'three of d: 2.65e-7 + 4.29e-8 + 2e-7 is 5.079e-7, still d',
    source: byHand,
    inputs: { rates: perHour(2.65e-7, 4.29e-8, 2e-7), lowest: 'd' },
    outputs: { rate: 5.079e-7 / hour, ofSum: 'd', level: 'd' },
    tolerance: exact,
    notes: ['CAUTION_GUARDING', 'LEVEL_NOT_NUMBER_ALONE'],
  },
  {
    name: 'each d, but together over 1e-6: c',
    source: byHand,
    inputs: { rates: perHour(4.9e-7, 4.9e-7, 4.9e-7), lowest: 'd' },
    outputs: { rate: 1.47e-6 / hour, ofSum: 'c', level: 'c' },
    tolerance: exact,
  },
  {
    name: 'a subsystem that states c holds the function to c, however rarely it fails',
    source: byHand,
    inputs: { rates: perHour(2e-8, 3e-8), lowest: 'c' },
    outputs: { rate: 5e-8 / hour, ofSum: 'e', level: 'c' },
    tolerance: exact,
    notes: ['LEVEL_HELD_BY_LOWEST'],
  },
];

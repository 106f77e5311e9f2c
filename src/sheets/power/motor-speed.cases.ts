import type { SheetCase } from '../sheet-case.ts';

const definition = {
  title: 'synchronous speed, 120 f/p',
  place: 'hand calculation',
  mark: 'computed',
} as const;
const rounding = { relative: 1e-9, reason: 'rounding of doubles' } as const;

export const motorSpeedCases: readonly SheetCase[] = [
  {
    name: 'four poles at 60 Hz: 1800 rpm; 1750 rpm on the plate is a slip of 2.78 %; through 35:1 it is 50 rpm',
    source: definition,
    inputs: { frequency: 60, poles: 4, slip: 50 / 1800, gearRatio: 35 },
    outputs: { synchronous: 30, motor: 1750 / 60, driven: 50 / 60 },
    tolerance: rounding,
    notes: ['CAUTION_ELECTRICAL'],
  },
  {
    name: 'two poles at 50 Hz: 3000 rpm',
    source: definition,
    inputs: { frequency: 50, poles: 2, slip: 0, gearRatio: 1 },
    outputs: { synchronous: 50, driven: 50 },
    tolerance: rounding,
  },
];

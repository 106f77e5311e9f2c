import type { SheetCase } from '../sheet-case.ts';

const phasors = { title: 'phasors in an independent script', mark: 'computed' } as const;

export const largestStartCases: readonly SheetCase[] = [
  {
    name: '61.5 A running and a start of 85 A of the same power factor: the phasors add to 146.5 A',
    source: { ...phasors, place: 'both at arccos 0.3, and both at arccos 0.85' },
    inputs: { running: 61.5, start: 85 },
    outputs: { current: 146.5 },
    tolerance: { relative: 1e-9, reason: 'phasors of one angle add as numbers' },
    notes: ['CAUTION_ELECTRICAL', 'SUM_CONSERVATIVE', 'START_ASK_UTILITY'],
  },
  {
    name: '61.5 A at 0.85 and a start of 85 A at 0.3 are 137.58 A at 0.5653',
    source: { ...phasors, place: 'complex numbers: 52.275 + 32.397i and 25.5 + 81.085i' },
    inputs: { running: 61.5, start: 85, runningFactor: 0.85, startFactor: 0.3 },
    outputs: { phasors: 137.58, powerFactor: 0.5653 },
    tolerance: { relative: 1e-4, reason: 'four printed digits' },
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const userDemandCases: readonly SheetCase[] = [
  {
    name: 'the cylinder of 5.547 L a cycle, twelve a minute: 66.56 L/min, and 397 L/min while it extends in 0.45 s',
    source: script,
    inputs: {
      volumes: [2.9784e-3, 2.5684e-3],
      rates: [0.2, 0.2],
      durations: [0.45, 0.45],
      together: [1, 0],
    },
    outputs: { averageFlow: 66.56e-3 / 60, peakFlow: 397e-3 / 60 },
    tolerance: { relative: 2e-3, reason: 'as the reference states it' },
    notes: ['DEMAND_NO_LEAK', 'AIR_REFERENCE'],
  },
];

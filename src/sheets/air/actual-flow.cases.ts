import type { SheetCase } from '../sheet-case.ts';

export const actualFlowCases: readonly SheetCase[] = [
  {
    name: '1000 L/min of free air at 7 bar(g) are 124.79 L/min and move at 6.620 m/s in 20 mm, by hand',
    source: {
      title: 'hand calculation',
      place: '1000/8.01325 L/min; 0.0020799 m3/s over 314.159 mm2',
      mark: 'computed',
    },
    inputs: { flow: 1 / 60, pressure: 7e5, bore: 0.02 },
    outputs: { actualFlow: 0.12479 / 60, velocity: 6.62 },
    tolerance: { relative: 2e-4, reason: 'four printed digits' },
    notes: ['AIR_REFERENCE'],
  },
];

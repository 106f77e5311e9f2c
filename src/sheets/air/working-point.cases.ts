import type { SheetCase } from '../sheet-case.ts';

export const workingPointCases: readonly SheetCase[] = [
  {
    name: '5.5 bar(g) at the machine: cut-in 6.8, cut-out 7.8 bar(g), by hand',
    source: {
      title: 'hand calculation',
      place: '5.5 + 0.2 + 0.5 + 0.1 + 0.5, and 1 of band; 7.5 given',
      mark: 'computed',
    },
    inputs: { machinePressure: 5.5e5, cutOut: 7.5e5 },
    outputs: { cutInNeeded: 6.8e5, cutOutNeeded: 7.8e5, margin: -0.3e5 },
    tolerance: { relative: 1e-9, reason: 'a sum' },
    notes: ['WORKING_POINT_SHORT', 'WORKING_POINT_ALLOWANCES', 'CAUTION_COMPRESSED_AIR'],
  },
];

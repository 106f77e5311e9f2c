import type { SheetCase } from '../sheet-case.ts';
import { closedForms } from './sources.ts';

export const twoVesselsCases: readonly SheetCase[] = [
  {
    name: '0.30 and 0.004 m2 through 8 mm, 0.50 to 0.25 m',
    source: closedForms,
    inputs: {
      upperArea: 0.3,
      lowerArea: 0.004,
      bore: 0.008,
      dischargeCoefficient: 0.8,
      startDifference: 0.5,
      endDifference: 0.25,
    },
    outputs: { time: 9.181 },
    tolerance: { relative: 1e-4, reason: 'four printed digits' },
  },
];

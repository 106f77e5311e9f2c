import type { SheetCase } from '../sheet-case.ts';
import { weighingScript } from './weighing-sources.ts';

const digits = { absolute: 1e-9, reason: 'printed to a microlitre' } as const;

export const packageVolumesCases: readonly SheetCase[] = [
  {
    name: 'two bottles with 498.732 g and 500 g of water at 22 degC, own tares',
    source: weighingScript,
    inputs: {
      gross: [0.823732, 0.83],
      tares: [0.325, 0.33],
      taring: 'each',
      density: 997.773,
    },
    outputs: { volumes: [500.372e-6, 501.644e-6], meanTare: 0.3275, tareRange: 0.005 },
    tolerance: digits,
  },
  {
    name: 'the same with the mean tare: 2.5 g go from one to the other',
    source: weighingScript,
    inputs: { gross: [0.823732, 0.83], tares: [0.325, 0.33], taring: 'mean', density: 997.773 },
    outputs: { volumes: [497.864e-6, 504.152e-6] },
    tolerance: digits,
    notes: ['PACKAGE_MEAN_TARE'],
  },
];

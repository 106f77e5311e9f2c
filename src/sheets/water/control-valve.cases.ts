import type { SheetCase } from '../sheet-case.ts';
import { ieValve } from './sources.ts';

export const controlValveCases: readonly SheetCase[] = [
  {
    name: 'IEC 60534-2-1 example, F_L 0.9, not choked',
    source: ieValve,
    inputs: {
      flow: 0.1,
      inletPressure: 680000,
      outletPressure: 220000,
      density: 965.4,
      vapourPressure: 70100,
      criticalPressure: 22120000,
      recovery: 0.9,
    },
    outputs: { kv: 165, criticalRatioFactor: 0.94424, sizingDifference: 460000 },
    tolerance: { relative: 3e-3, reason: 'three printed digits' },
  },
  {
    name: 'IEC 60534-2-1 example, F_L 0.6, choked',
    source: ieValve,
    inputs: {
      flow: 0.1,
      inletPressure: 680000,
      outletPressure: 220000,
      density: 965.4,
      vapourPressure: 70100,
      criticalPressure: 22120000,
      recovery: 0.6,
    },
    outputs: { kv: 238, chokedDifference: 221000, sizingDifference: 221000 },
    tolerance: { relative: 3e-3, reason: 'three printed digits' },
    notes: ['VALVE_CHOKED'],
  },
];

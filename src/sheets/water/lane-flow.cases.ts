import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const laneFlowCases: readonly SheetCase[] = [
  {
    name: 'juice of 1 045 kg/m3, 0.3 bar and 0.35 m through Kv 1.2',
    source: arithmetic,
    inputs: { kv: 1.2, manifoldPressure: 30000, manifoldHeight: 1.35, outletHeight: 1, density: 1045 },
    outputs: { pressureDifference: 33586.7822375, flow: 0.000188975193761 },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
  },
];

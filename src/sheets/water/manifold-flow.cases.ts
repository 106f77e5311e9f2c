import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const manifoldFlowCases: readonly SheetCase[] = [
  {
    name: 'by hand: at 1.44 bar valves of Kv 1.2, 1.0 and 0.5 take 1.44, 1.2 and 0.6 m3/h of water',
    source: arithmetic,
    inputs: {
      kv: [1.2, 1, 0.5],
      outletHeight: [2, 2, 2],
      manifoldPressure: 1.44e5,
      manifoldHeight: 2,
      density: 1000,
    },
    outputs: { flow: 3.24 / 3600 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
];

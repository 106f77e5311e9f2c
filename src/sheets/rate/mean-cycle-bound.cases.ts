import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './trial-sources.ts';

export const meanCycleBoundCases: readonly SheetCase[] = [
  {
    name: 'ten cycles about 16.12 s, three bottles each: under 16.2098 s at 95 %, 669.975/h, over 666.263/h',
    source: statisticsScript,
    inputs: {
      cycles: [16.1, 16.0, 16.3, 15.9, 16.2, 16.0, 16.4, 16.1, 16.0, 16.2],
      bottles: 3,
      confidence: 0.95,
    },
    outputs: {
      mean: 16.12,
      spread: 0.15491933384829631,
      upper: 16.20980382651809,
      rate: 669.9751861042184 / 3600,
      rateBound: 666.2634610254793 / 3600,
    },
    tolerance: { relative: 1e-12, reason: 'printed digits' },
    notes: ['CYCLES_NO_STOP', 'CYCLES_FEW'],
  },
];

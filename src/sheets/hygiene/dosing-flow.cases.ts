import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const dosingFlowCases: readonly SheetCase[] = [
  {
    name: '1000 L/h to 50 mg/L from 125 g/L, 0.5 mg/L in the water: 0.39616 L/h',
    source: script,
    inputs: { flow: 1 / 3600, strong: 125, wanted: 0.05, arriving: 0.0005 },
    outputs: { dose: 0.39616e-3 / 3600 },
    tolerance: { relative: 1e-4, reason: 'five printed digits' },
    notes: ['DOSING_NO_DEMAND', 'CAUTION_CHEMICAL'],
  },
  {
    name: 'the same with 10 mg/L used up: 0.47623 L/h',
    source: script,
    inputs: { flow: 1 / 3600, strong: 125, wanted: 0.05, arriving: 0.0005, demand: 0.01 },
    outputs: { dose: 0.47623e-3 / 3600 },
    tolerance: { relative: 1e-4, reason: 'five printed digits' },
  },
];

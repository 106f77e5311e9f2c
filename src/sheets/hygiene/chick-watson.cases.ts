import type { SheetCase } from '../sheet-case.ts';
import { disinfectionTextbook, script } from './sources.ts';

export const chickWatsonCases: readonly SheetCase[] = [
  {
    name: 'k 0.2078 L/(mg s) at 1.8 mg/L: 4 logs take 24.62 s',
    source: script,
    inputs: { rate: 207.8, residual: 1.8e-3, logs: 4 },
    outputs: { neededTime: 24.62 },
    tolerance: { relative: 2e-3, reason: 'four printed digits, k itself rounded' },
  },
  {
    name: 'example 13-4: 6152 fall to 300 in 8 s at 1.8 mg/L, 1.312 logs',
    source: disinfectionTextbook,
    inputs: { rate: 207.8, residual: 1.8e-3, time: 8, logs: 4 },
    outputs: { ct: 0.0144, reached: 1.312 },
    tolerance: { relative: 1.2e-2, reason: 'one point beside the line of the fit, 1 % off' },
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { disinfectionTextbook } from './sources.ts';

export const chickWatsonRateCases: readonly SheetCase[] = [
  {
    name: 'example 13-4: HOCl 1.8 mg/L, 6152 to 300 in 8 s: k 0.2078 L/(mg s), R2 0.9953',
    source: disinfectionTextbook,
    inputs: { times: [0, 2, 4, 6, 8], counts: [6152, 3000, 1200, 710, 300], residual: 1.8e-3 },
    outputs: { rate: 207.8, explained: 0.9953 },
    tolerance: { relative: 2e-3, reason: 'four printed digits, logarithms rounded in print' },
  },
  {
    name: 'example 13-4: ln ratios 0, -0.718, -1.63, -2.16, -3.02; intercept magnitude 0.0092 to 0.010',
    source: disinfectionTextbook,
    inputs: { times: [0, 2, 4, 6, 8], counts: [6152, 3000, 1200, 710, 300], residual: 1.8e-3 },
    outputs: { survivors: [0, -0.718, -1.63, -2.16, -3.02], intercept: -0.0096 },
    tolerance: { absolute: 5e-3, reason: 'printed with two decimals' },
  },
];

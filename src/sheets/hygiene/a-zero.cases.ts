import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const aZeroCases: readonly SheetCase[] = (
  [
    [600, 80, 600],
    [60, 90, 600],
    [300, 90, 3000],
    [900, 76.67, 418],
    [300, 93.33, 6463],
  ] as const
).map(([seconds, celsius, given]) => ({
  name: `${seconds} s at ${celsius} degC are A0 ${given}`,
  source: script,
  inputs: { times: [0, seconds], temperatures: [celsius + 273.15, celsius + 273.15] },
  outputs: { seconds: given, time: given },
  tolerance: { relative: 2e-3, reason: 'three printed digits' },
  notes: ['A_ZERO_NO_RULE'],
}));

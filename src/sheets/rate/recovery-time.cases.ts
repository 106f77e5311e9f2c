import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const recoveryTimeCases: readonly SheetCase[] = [
  {
    name: '30 bottles at 675/h, washer 15 % faster: 1 066.667 s',
    source: arithmetic,
    inputs: { bottles: 30, faster: (1.15 * 675) / 3600, slower: 675 / 3600 },
    outputs: { time: 1066.667 },
    tolerance: { relative: 1e-6, reason: 'seven printed digits' },
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const vapourTogetherCases: readonly SheetCase[] = [
  {
    name: '1.2 and 0.6 kg/h are 0.5 g/s',
    source: arithmetic,
    inputs: { flows: [1.2 / 3600, 0.6 / 3600] },
    outputs: { flow: 5e-4 },
    tolerance: { relative: 1e-12, reason: 'a sum' },
  },
];

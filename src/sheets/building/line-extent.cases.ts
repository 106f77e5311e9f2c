import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

const exact = { absolute: 1e-9, reason: 'sums of stated lengths' } as const;

export const lineExtentCases: readonly SheetCase[] = [
  {
    name: 'sections of 3 by 1.2 and 2 by 1 m end to end with 0.8 m around: 6.6 by 2.8 m',
    source: arithmetic,
    inputs: {
      x: [0, 3],
      y: [0, 0],
      lengths: [3, 2],
      widths: [1.2, 1],
      turned: [0, 0],
      clearances: [0.8, 0.8],
    },
    outputs: { length: 6.6, width: 2.8 },
    tolerance: exact,
  },
  {
    name: 'a quarter turn of 3 by 1 m about its corner goes 1 m back along the plan and 3 m across it',
    source: arithmetic,
    inputs: {
      x: [0, 0],
      y: [0, 0],
      lengths: [3, 3],
      widths: [1, 1],
      turned: [0, Math.PI / 2],
      clearances: [0, 0],
    },
    outputs: { length: 4, width: 3 },
    tolerance: exact,
  },
  {
    name: 'a square of 2 m on its corner is as long and as wide as its diagonal, 2.82842712 m',
    source: arithmetic,
    inputs: { x: [5], y: [-2], lengths: [2], widths: [2], turned: [Math.PI / 4], clearances: [0] },
    outputs: { length: 2.828427125, width: 2.828427125 },
    tolerance: { absolute: 1e-9, reason: 'ten printed digits' },
  },
];

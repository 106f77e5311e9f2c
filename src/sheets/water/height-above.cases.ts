import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const heightAboveCases: readonly SheetCase[] = [
  {
    name: 'a surface 1.8 m over the floor is 1.45 m above a point at 0.35 m',
    source: arithmetic,
    inputs: { surface: 1.8, point: 0.35 },
    outputs: { height: 1.45 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
  {
    name: 'a pump 2 ft over a pit of which the surface lies 5 ft under the floor lifts 7 ft',
    source: arithmetic,
    inputs: { surface: -1.524, point: 0.6096 },
    outputs: { height: -2.1336 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
];

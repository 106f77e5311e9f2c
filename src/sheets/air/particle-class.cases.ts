import type { SheetCase } from '../sheet-case.ts';
import { iso8573 } from './sources.ts';

const word = { absolute: 1e-9, reason: 'a class is right or wrong' } as const;

export const particleClassCases: readonly SheetCase[] = (
  [
    ['class 1 to its limits', 20_000, 400, 10, 'no', 0, '1'],
    ['one particle more of 1 to 5 um is class 2', 20_000, 400, 11, 'no', 0, '2'],
    ['class 2 to its limits', 400_000, 6_000, 100, 'no', 0, '2'],
    ['class 3 does not count the smallest', 5e6, 90_000, 1_000, 'no', 0, '3'],
    ['class 4', 5e6, 5e6, 10_000, 'no', 0, '4'],
    ['class 5', 5e6, 5e6, 100_000, 'no', 0, '5'],
    ['classes 1 to 5 have no particle over 5 um: by mass', 0, 0, 0, 'yes', 5e-6, '6'],
    ['class 7 by mass', 5e6, 5e6, 200_000, 'no', 10e-6, '7'],
    ['X by mass', 5e6, 5e6, 200_000, 'no', 10.1e-6, 'X'],
  ] as const
).map(([name, small, medium, large, over5, mass, particleClass]) => ({
  name,
  source: iso8573,
  inputs: { small, medium, large, over5, mass },
  outputs: { particleClass },
  tolerance: word,
}));

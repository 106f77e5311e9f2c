import type { SheetCase } from '../sheet-case.ts';
import { iso8573 } from './sources.ts';

const word = { absolute: 1e-9, reason: 'a class is right or wrong' } as const;

export const oilClassCases: readonly SheetCase[] = (
  [
    [0.01, '1'],
    [0.011, '2'],
    [0.1, '2'],
    [1, '3'],
    [5, '4'],
    [5.1, 'X'],
  ] as const
).map(([milligrams, oilClass]) => ({
  name: `${milligrams} mg/m3 of oil is class ${oilClass}`,
  source: iso8573,
  inputs: { oil: milligrams * 1e-6 },
  outputs: { oilClass },
  tolerance: word,
}));

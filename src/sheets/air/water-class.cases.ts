import type { SheetCase } from '../sheet-case.ts';
import { iso8573 } from './sources.ts';

const word = { absolute: 1e-9, reason: 'a class is right or wrong' } as const;

export const waterClassCases: readonly SheetCase[] = (
  [
    [3, 0, '4'],
    [3.1, 0, '5'],
    [-70, 0, '1'],
    [-40, 0, '2'],
    [-39.9, 0, '3'],
    [-20, 0, '3'],
    [7, 0, '5'],
    [10, 0, '6'],
    [10.1, 0, '7'],
    [20, 0.5, '7'],
    [20, 5, '8'],
    [20, 10, '9'],
    [20, 10.1, 'X'],
  ] as const
).map(([celsius, grams, given]) => ({
  name: `${celsius} degC with ${grams} g/m3 of liquid water is class ${given}`,
  source: iso8573,
  inputs: { dewPoint: celsius + 273.15, liquid: grams / 1000 },
  outputs: { waterClass: given },
  tolerance: word,
}));

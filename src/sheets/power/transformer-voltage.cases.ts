import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const transformerVoltageCases: readonly SheetCase[] = [
  {
    name: '200 V at a transformer of 208 to 480 V leave 461.5 V',
    source: arithmetic,
    inputs: { voltage: 200, primary: 208, secondary: 480 },
    outputs: { secondary: 461.538 },
    tolerance: { relative: 1e-5, reason: 'six digits' },
  },
  {
    name: 'a winding of ten to one, with 390 V instead of 400 V before it, gives 39 V',
    source: arithmetic,
    inputs: { voltage: 390, primary: 400, secondary: 40 },
    outputs: { secondary: 39 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
];

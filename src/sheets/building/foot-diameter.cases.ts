import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const footDiameterCases: readonly SheetCase[] = [
  {
    name: 'a plate of 5026.548 mm2 is 80 mm across',
    source: arithmetic,
    inputs: { area: 5026.548e-6 },
    outputs: { diameter: 0.08 },
    tolerance: { relative: 1e-6, reason: 'seven digits' },
    notes: ['CAUTION_STRUCTURE'],
  },
  {
    name: '12.5664 square inches are 4 in across',
    source: arithmetic,
    inputs: { area: 12.5664 * 0.0254 ** 2 },
    outputs: { diameter: 0.1016 },
    tolerance: { relative: 1e-5, reason: 'five digits' },
  },
];

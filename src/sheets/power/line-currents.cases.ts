import type { SheetCase } from '../sheet-case.ts';

const electricians = {
  title: 'public discussion of heater elements by electricians',
  place: 'three elements of 11 A in delta, and two of them',
  mark: 'read',
} as const;
const one = { powerFactorAb: 1, powerFactorBc: 1, powerFactorCa: 1 };

export const lineCurrentsCases: readonly SheetCase[] = [
  {
    name: 'three elements of 11 A in delta: 19.05 A a line',
    source: electricians,
    inputs: { ...one, ab: 11, bc: 11, ca: 11 },
    outputs: { a: 19.05, b: 19.05, c: 19.05 },
    tolerance: { absolute: 0.01, reason: 'printed to a hundredth' },
    notes: ['CAUTION_ELECTRICAL'],
  },
  {
    name: 'only a-b and b-c fitted: 11, 19.05 and 11 A',
    source: electricians,
    inputs: { ...one, ab: 11, bc: 11, ca: 0 },
    outputs: { a: 11, b: 19.05, c: 11 },
    tolerance: { absolute: 0.01, reason: 'printed to a hundredth' },
    notes: ['LINES_UNEQUAL'],
  },
  {
    name: '105, 33 and 33 A in delta: 124.8, 124.8 and 57.16 A',
    source: {
      title: 'public page on line currents of an unbalanced delta',
      place: 'worked example',
      mark: 'read',
    },
    inputs: { ...one, ab: 105, bc: 33, ca: 33 },
    outputs: { a: 124.8, b: 124.8, c: 57.16 },
    tolerance: { absolute: 0.1, reason: 'printed to a tenth' },
  },
];

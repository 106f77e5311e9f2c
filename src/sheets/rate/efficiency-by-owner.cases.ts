import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

const run = { duration: 8 * 3600, setRate: 675 / 3600 } as const;
const exact = { relative: 1e-12, reason: 'sums and divisions' };

export const efficiencyByOwnerCases: readonly SheetCase[] = [
  {
    name: '8 h at 675/h, 24 min by the machine, 36 min from outside, 4 500 good: 0.8333 and 0.9009',
    source: arithmetic,
    inputs: { ...run, good: 4500, machine: 24 * 60, supply: 18 * 60, people: 10 * 60, material: 8 * 60 },
    outputs: {
      overall: 5 / 6,
      technical: 100 / 111,
      external: 2160,
      gross: 444 * 60,
      technicalAvailability: 35 / 37,
    },
    tolerance: exact,
    notes: ['EFFICIENCY_OWNERS_AGREED'],
  },
  {
    name: 'no stop from outside: both efficiencies are one',
    source: arithmetic,
    inputs: { ...run, good: 5130, machine: 24 * 60, supply: 0, people: 0, material: 0 },
    outputs: { overall: 0.95, technical: 0.95, external: 0, technicalAvailability: 0.95 },
    tolerance: exact,
  },
  {
    name: 'three of eight hours without bottles from the washer: 0.625 of the set rate, and the machine did all',
    source: arithmetic,
    inputs: { ...run, good: 3375, machine: 0, supply: 3 * 3600, people: 0, material: 0 },
    outputs: { overall: 0.625, technical: 1, gross: 5 * 3600, technicalAvailability: 1 },
    tolerance: exact,
    notes: ['EFFICIENCY_MUCH_EXTERNAL'],
  },
];

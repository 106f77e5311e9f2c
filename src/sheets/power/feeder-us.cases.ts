import type { SheetCase } from '../sheet-case.ts';
import { feederDiscussion, necExampleD8 } from './sources.ts';

const exact = { relative: 1e-12, reason: 'exact sums and a figure of a list' } as const;

export const feederUsCases: readonly SheetCase[] = [
  {
    name: 'example D8: 34, 40 and 40 A, fuses 110, 60 and 60 A: 124 A, 190 A, 175 A',
    source: necExampleD8,
    inputs: { motors: [34, 40, 40], devices: [110, 60, 60], continuous: 0, other: 0 },
    outputs: { ampacity: 124, deviceLimit: 190, deviceRating: 175 },
    tolerance: exact,
    notes: ['CAUTION_ELECTRICAL', 'NEC_430', 'ROUNDED_DOWN'],
  },
  {
    name: 'example D8: one 25 hp motor alone asks 42.5 A',
    source: necExampleD8,
    inputs: { motors: [34], devices: [110], continuous: 0, other: 0 },
    outputs: { ampacity: 42.5 },
    tolerance: exact,
  },
  {
    name: 'example D8: one 30 hp motor alone asks 50 A',
    source: necExampleD8,
    inputs: { motors: [40], devices: [60], continuous: 0, other: 0 },
    outputs: { ampacity: 50 },
    tolerance: exact,
  },
  {
    name: 'discussion of a feeder: 124, 124, 77 and 11 A: 367 A, not 125 % of all; 562 A, so 500 A',
    source: feederDiscussion,
    inputs: { motors: [124, 124, 77, 11], devices: [350, 350, 200, 30], continuous: 0, other: 0 },
    outputs: { ampacity: 367, deviceLimit: 562, deviceRating: 500 },
    tolerance: exact,
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const contactShareCases: readonly SheetCase[] = [
  {
    name: 'four stations, 12 s, wetted 8 s: residence 48 s, contact 32 s; 120 s ask an index of 45 s',
    source: script,
    inputs: { stations: 4, index: 12, share: 8 / 12, required: 120 },
    outputs: { residence: 48, contact: 32, leastIndex: 45 },
    tolerance: { relative: 1e-12, reason: 'exact' },
    notes: ['CONTACT_SHORT'],
  },
];

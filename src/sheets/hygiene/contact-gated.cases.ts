import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const contactGatedCases: readonly SheetCase[] = [
  {
    name: 'four stations, dead time 4 s, no time-out: contact 32 s at 12 s; 120 s ask an index of 34 s',
    source: script,
    inputs: { stations: 4, index: 12, dead: 4, required: 120 },
    outputs: { residence: 48, wetted: 8, contact: 32, leastIndex: 34 },
    tolerance: { relative: 1e-12, reason: 'exact' },
    notes: ['CONTACT_SHORT'],
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const receiverLeastCases: readonly SheetCase[] = [
  {
    name: '6.2 bar(g) of which 5.35 arrive where 5 are needed may fall to 5.85',
    source: script,
    inputs: { receiver: 6.2e5, arrives: 5.35e5, needed: 5e5 },
    outputs: { least: 5.85e5 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
  {
    name: 'where too little arrives it must rise',
    source: script,
    inputs: { receiver: 6e5, arrives: 4.8e5, needed: 5e5 },
    outputs: { least: 6.2e5 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
    notes: ['RECEIVER_DROP_SHORT', 'CAUTION_COMPRESSED_AIR'],
  },
];

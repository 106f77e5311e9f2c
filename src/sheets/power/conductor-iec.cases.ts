import type { SheetCase } from '../sheet-case.ts';

const worked = {
  title: 'IEC 60364-5-52 and BS 7671 table 4D1A',
  place: 'table and factors read, coordination worked apart from this program',
  mark: 'computed',
} as const;

export const conductorIecCases: readonly SheetCase[] = [
  {
    name: '21 A at 40 °C in B2: 25 A device; 4 mm2 carries 23.5 A only, so 6 mm2 with 29.6 A',
    source: worked,
    inputs: {
      current: 21,
      protection: 'circuit-breaker',
      method: 'b2-multicore',
      ambient: 313.15,
      circuits: 1,
    },
    outputs: { rating: 25, size: '6 mm2', allowed: 29.58 },
    tolerance: { relative: 1e-3, reason: 'four digits' },
    notes: ['CAUTION_ELECTRICAL', 'IEC_RATINGS_FROM_MEMORY', 'IEC_COORDINATION'],
  },
  {
    name: '24 A at 30 °C in B2 behind a fuse of 25 A: 4 mm2 carries 27 A, 27.6 A are needed, so 6 mm2',
    source: worked,
    inputs: { current: 24, protection: 'fuse', method: 'b2-multicore', ambient: 303.15, circuits: 1 },
    outputs: { rating: 25, size: '6 mm2', allowed: 34 },
    tolerance: { relative: 1e-9, reason: 'figures of a table' },
  },
];

import type { SheetCase } from '../sheet-case.ts';

const table = {
  title: 'NEC table 250.122 (250-95 of older editions)',
  edition: 'before 1999',
  place: 'copper rows, public transcription',
  mark: 'read',
} as const;
const exact = { absolute: 0.5, reason: 'a word of a table, right or wrong' } as const;

export const groundingConductorUsCases: readonly SheetCase[] = [
  {
    name: 'behind 60 A: 10 AWG',
    source: table,
    inputs: { rating: 60 },
    outputs: { size: '10 AWG' },
    tolerance: exact,
    notes: ['CAUTION_ELECTRICAL', 'NEC_250_122'],
  },
  {
    name: 'behind 90 A the row of 100 A: 8 AWG',
    source: table,
    inputs: { rating: 90 },
    outputs: { size: '8 AWG' },
    tolerance: exact,
  },
  {
    name: 'behind 800 A: 1/0 AWG',
    source: table,
    inputs: { rating: 800 },
    outputs: { size: '1/0 AWG' },
    tolerance: exact,
  },
];

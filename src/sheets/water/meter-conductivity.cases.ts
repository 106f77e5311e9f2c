import type { SheetCase } from '../sheet-case.ts';

const article = {
  title: 'trade article on conductivity limits of meters',
  edition: 'March 2005',
  place: '5 uS/cm usual, 20 uS/cm for water by one maker',
  mark: 'read',
} as const;
const exact = { relative: 1e-9, reason: 'ratios of stated figures' } as const;

export const meterConductivityCases: readonly SheetCase[] = [
  {
    name: 'town water of 500 uS/cm counts',
    source: article,
    inputs: { conductivity: 0.05 },
    outputs: { answer: 'counts', usualRatio: 100, waterRatio: 25 },
    tolerance: exact,
    notes: ['METER_SITE_WATER', 'METER_LIMITS_DIFFER'],
  },
  {
    name: 'water behind a membrane of 8 uS/cm lies between the two limits',
    source: article,
    inputs: { conductivity: 8e-4 },
    outputs: { answer: 'ask the maker', usualRatio: 1.6, waterRatio: 0.4 },
    tolerance: exact,
    notes: ['METER_ASK'],
  },
  {
    name: 'demineralised water of 1 uS/cm does not count',
    source: article,
    inputs: { conductivity: 1e-4 },
    outputs: { answer: 'does not count' },
    tolerance: exact,
    notes: ['METER_NO_COUNT'],
  },
];

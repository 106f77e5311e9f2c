import type { SheetCase } from '../sheet-case.ts';

const recalled = {
  title: '40 CFR 143.3, secondary levels',
  place: 'iron 0.3, manganese 0.05 mg/L',
  mark: 'memory',
} as const;
const exact = { absolute: 1e-9, reason: 'a count' } as const;

export const siteWaterCases: readonly SheetCase[] = [
  {
    name: 'iron of 0.5 mg/L and 200 mg/L of hardness: two remarks',
    source: recalled,
    inputs: { iron: 0.5e-3, hardness: 0.2 },
    outputs: { remarks: 2, answer: 'ask first' },
    tolerance: exact,
    notes: ['SITE_WATER_IRON', 'HARDNESS_SCALE', 'SITE_WATER_ONE_SAMPLE'],
  },
  {
    name: 'cold soft water without iron',
    source: recalled,
    inputs: { hardness: 0.05, chlorine: 0.3e-3, temperature: 285.15 },
    outputs: { remarks: 0, answer: 'no remark' },
    tolerance: exact,
  },
];

import type { SheetCase } from '../sheet-case.ts';

const discussion = {
  title: 'NEC 450.3(B)',
  edition: '2008',
  place: '125 % with the next rating up, public discussion by electricians',
  mark: 'read',
} as const;
const memory = {
  title: 'NEC 450.3(B)',
  edition: '2008',
  place: 'table, other columns',
  mark: 'memory',
} as const;
const four = { relative: 1e-3, reason: 'four digits' } as const;

export const transformerDeviceUsCases: readonly SheetCase[] = [
  {
    name: '112.5 kVA at 480 V, 135.3 A, primary alone: 169.1 A, 175 A',
    source: discussion,
    inputs: { current: 135.3, side: 'primary-alone' },
    outputs: { share: 1.25, limit: 169.1, rating: 175 },
    tolerance: four,
    notes: ['CAUTION_ELECTRICAL', 'NEC_450_3', 'ROUNDED_UP'],
  },
  {
    name: 'the same with a secondary device: 250 %, 338 A, so 300 A',
    source: memory,
    inputs: { current: 135.3, side: 'primary-with-secondary' },
    outputs: { limit: 338.25, rating: 300 },
    tolerance: four,
  },
  {
    name: 'a secondary of 6 A: 167 %, 10 A',
    source: memory,
    inputs: { current: 6, side: 'secondary' },
    outputs: { limit: 10.02, rating: 10 },
    tolerance: four,
  },
];

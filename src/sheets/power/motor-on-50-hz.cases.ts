import type { SheetCase } from '../sheet-case.ts';
import { horsepower } from './horsepower.ts';

const maker = {
  title: 'instruction of a motor maker on 50 Hz operation of 60 Hz motors',
  place: 'worked examples, public page',
  mark: 'read',
} as const;

export const motorOn50HzCases: readonly SheetCase[] = [
  {
    name: '10 hp at 380 V, enclosed: 10/0.80 = 12.5, so 15 hp',
    source: maker,
    inputs: { power: 10 * horsepower, supply: '190/380/475', enclosure: 'enclosed' },
    outputs: { share: 0.8, needed: 12.5 * horsepower, rating: 15 * horsepower },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['CAUTION_ELECTRICAL', 'FIFTY_HERTZ_TABLE'],
  },
  {
    name: '13 hp at 415 V, open: 13/0.75 = 17.3, so 20 hp',
    source: maker,
    inputs: { power: 13 * horsepower, supply: '208/415/520', enclosure: 'open' },
    outputs: { share: 0.75, needed: 17.3 * horsepower, rating: 20 * horsepower },
    tolerance: { relative: 2e-3, reason: '17.3 is printed for 17.33' },
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

const exact = { absolute: 1e-6, reason: 'differences of stated lengths' } as const;

export const passageCases: readonly SheetCase[] = [
  {
    name: 'a section of 1.10 by 1.90 m on 120 mm of skates through 1.25 by 2.10 m: 50 and 30 mm left',
    source: arithmetic,
    inputs: {
      width: 1.1,
      height: 1.9,
      gearHeight: 0.12,
      openingWidth: 1.25,
      openingHeight: 2.1,
      clearance: 0.05,
    },
    outputs: { widthMargin: 0.05, heightMargin: 0.03, answer: 'passes' },
    tolerance: exact,
    notes: ['CAUTION_MOVING', 'GEAR_HEIGHT'],
  },
  {
    name: 'on a truck of 200 mm it is 50 mm too high',
    source: arithmetic,
    inputs: {
      width: 1.1,
      height: 1.9,
      gearHeight: 0.2,
      openingWidth: 1.25,
      openingHeight: 2.1,
      clearance: 0.05,
    },
    outputs: { heightMargin: -0.05, answer: 'too high' },
    tolerance: exact,
    notes: ['PASSAGE_SHORT'],
  },
];

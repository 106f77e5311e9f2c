import type { SheetCase } from '../sheet-case.ts';

const table = {
  title: 'ISO 13857, openings for ages of 14 and over',
  place: 'public page of a consultant, table of slots, squares and round holes',
  mark: 'read',
} as const;
const exact = { relative: 1e-9, reason: 'whole millimetres' } as const;

/** Rows as printed: kind, width, distance, mm. */
const rows = [
  ['slot', 4, 2],
  ['slot', 6, 10],
  ['slot', 8, 20],
  ['slot', 10, 80],
  ['slot', 12, 100],
  ['slot', 20, 120],
  ['slot', 120, 850],
  ['square', 4, 2],
  ['square', 6, 5],
  ['square', 8, 15],
  ['square', 10, 25],
  ['square', 12, 80],
  ['square', 30, 120],
  ['square', 40, 200],
  ['square', 120, 850],
  ['round', 4, 2],
  ['round', 6, 5],
  ['round', 8, 5],
  ['round', 10, 20],
  ['round', 12, 80],
  ['round', 30, 120],
  ['round', 40, 120],
  ['round', 120, 850],
] as const;

export const reachThroughCases: readonly SheetCase[] = [
  ...rows.map(([opening, width, reach]) => ({
    name: `${opening} of ${width} mm: ${reach} mm`,
    source: table,
    inputs: { opening, width: width / 1000 },
    outputs: { reach: reach / 1000 },
    tolerance: exact,
    notes: ['CAUTION_GUARDING', 'REACH_FROM_14'],
  })),
  {
    name: 'a slot of 11 mm takes the row of 12: 100 mm',
    source: {
      ...table,
      title: 'ISO 13857',
      place: 'between table values the longer distance, none between; public transcription',
    },
    inputs: { opening: 'slot', width: 0.011 },
    outputs: { reach: 0.1 },
    tolerance: exact,
  },
  {
    name: 'a slot of 30 by 65 mm: 200 mm',
    source: { ...table, place: 'cut-outs no larger than 30 by 65 mm' },
    inputs: { opening: 'slot', width: 0.03, length: 0.065 },
    outputs: { reach: 0.2 },
    tolerance: exact,
    notes: ['REACH_THUMB'],
  },
];

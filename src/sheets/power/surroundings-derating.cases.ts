import type { Source } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';

const manual: Source = {
  title: 'application manual of a motor maker, reduction factors for ambient temperature and altitude',
  edition: '05/08',
  place: 'worked examples below table 1, public transcription',
  mark: 'read',
};

/** Page on motors at altitude: one factor for each band of feet, a hall of 40 degC. */
const bands: Source = {
  title: 'public page on derating by altitude',
  place: 'chart of typical factors, 3300 to 11 500 ft',
  mark: 'read',
};

/** What is asked and what the plate must say, in hp: their ratio is the factor. */
type Example = readonly [celsius: number, metres: number, asked: number, factor: number, needed: number];

const examples: readonly Example[] = [
  [50, 2000, 25, 0.86, 29.1],
  [55, 3500, 130, 0.71, 183.1],
  [35, 2000, 55, 0.97, 56.7],
  [30, 4000, 7, 0.82, 8.5],
];

export const surroundingsDeratingCases: readonly SheetCase[] = [
  ...examples.map(
    ([celsius, metres, asked, factor, needed]): SheetCase => ({
      name: `${celsius} degC, ${metres} m: ${asked} hp want ${needed} hp on the plate, factor ${factor}`,
      source: manual,
      inputs: { ambient: celsius + 273.15, altitude: metres },
      outputs: { factor: asked / needed },
      tolerance: { relative: 6e-3, reason: 'the plate is printed to two digits at the least' },
      notes: ['CAUTION_ELECTRICAL', 'SURROUNDINGS_DERATE'],
    }),
  ),
  ...(
    [
      [5000, 0.97],
      [6600, 0.94],
      [8300, 0.9],
      [9900, 0.86],
      [11_500, 0.82],
    ] as const
  ).map(
    ([feet, factor]): SheetCase => ({
      name: `${feet} ft at 40 degC: ${factor}`,
      source: bands,
      inputs: { ambient: 313.15, altitude: feet * 0.3048 },
      outputs: { factor },
      tolerance: { relative: 5e-3, reason: 'the bands end up to 25 m beside the rows of the other table' },
    }),
  ),
];

import { numberField } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { between, tablePlace } from '../table-place.ts';
import { always, caution } from './caution.ts';

const factorTable: Source = {
  title: 'application manual of a motor maker, reduction factors for ambient temperature and altitude',
  edition: '05/08',
  place: 'table 1, public transcription',
  mark: 'read',
};

/** K; the first row holds from here downward, a plate being good for 40 degC. */
const ambients = [303.15, 308.15, 313.15, 318.15, 323.15, 328.15, 333.15] as const;
/** m; the first column holds from here downward. */
const altitudes = [1000, 1500, 2000, 2500, 3000, 3500, 4000] as const;
/** A row an ambient, a column an altitude. */
const factors = [
  [1.06, 1.03, 1, 0.95, 0.91, 0.87, 0.82],
  [1.03, 1, 0.97, 0.93, 0.89, 0.84, 0.79],
  [1, 0.97, 0.94, 0.9, 0.86, 0.82, 0.77],
  [0.96, 0.93, 0.9, 0.86, 0.83, 0.79, 0.74],
  [0.92, 0.89, 0.86, 0.83, 0.79, 0.75, 0.71],
  [0.87, 0.84, 0.82, 0.78, 0.75, 0.71, 0.67],
  [0.82, 0.8, 0.77, 0.74, 0.71, 0.67, 0.63],
] as const;

/**
 * Share of its rating that a motor may give in a warm hall or in thin air.
 *
 * Method   straight between the rows and columns of the table; never more than the plate
 * Symbols  ambient   scalar  K   up to 333.15
 *          altitude  scalar  m   up to 4000
 * Returns  ratio, at most 1
 * Assumes  a plate for 40 degC and 1000 m, on the mains and not behind an inverter
 * Cost     O(rows)
 * Source   motor maker's application manual, table 1
 */
export const surroundingsFactor = (ambient: number, altitude: number): number => {
  const row = tablePlace(ambients, ambient, 'interpolated', 'upper');
  const column = tablePlace(altitudes, altitude, 'interpolated', 'upper');
  return Math.min(
    1,
    between(row, (r) => between(column, (c) => factors[r]![c]!)),
  );
};

interface SurroundingsDeratingInputs {
  readonly ambient: number;
  readonly altitude: number;
}

// what a unit makes of the last row may lie a rounding beyond it
const slack = 1e-6;

export const surroundingsDeratingSheet = defineSheet({
  id: 'power/surroundings-derating',
  version: 1,
  inputs: {
    ambient: numberField('temperature', 'T_a', {
      least: 233.15,
      most: ambients.at(-1)! + slack,
      table: factorTable,
    }),
    altitude: numberField('length', 'z', {
      least: -500,
      most: altitudes.at(-1)! + slack,
      table: factorTable,
    }),
  },
  outputs: { factor: numberField('ratio', 'k_a') },
  formula: ['k_a = \\min \\left( 1,\\ \\text{table}(T_a, z) \\right)'],
  limits: [
    caution,
    always('SURROUNDINGS_ONE_MAKER'),
    {
      code: 'SURROUNDINGS_DERATE',
      broken: (_, { factor }) => factor < 1,
    },
  ],
  sources: [factorTable],
  compute: (i: SurroundingsDeratingInputs) => ({ factor: surroundingsFactor(i.ambient, i.altitude) }),
});

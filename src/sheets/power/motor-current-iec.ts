import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { offTable } from '../table-problem.ts';
import { always, caution } from './caution.ts';
import { type TypicalRow, typicalRows, typicalTable } from './typical-currents.ts';

/** Plates are printed in whole or tenth kilowatts. */
const plateTolerance = 2e-3;

/** Row of an IEC plate rating in W, or undefined between rows. */
export const typicalRow = (power: number): TypicalRow | undefined =>
  typicalRows.find(({ kilowatts }) => Math.abs(power / (1000 * kilowatts) - 1) <= plateTolerance);

/**
 * Typical current of a cage motor at 400 V, lowest and highest of the tables in use.
 *
 * Method   row of the rating; nothing between rows
 * Symbols  power  scalar  W, one of the ratings 0.12 to 75 kW
 * Returns  A, lowest and highest; undefined off the table
 * Assumes  three-phase, 400 V, 50 Hz, four poles; the nameplate always wins
 * Cost     O(rows)
 * Source   two handbooks to IEC 60947, read; IEC 60947-4-1 annex G, memory
 */
export const typicalCurrents = (
  power: number,
): { readonly lowest: number; readonly highest: number } | undefined => {
  const row = typicalRow(power);
  if (row === undefined) return undefined;
  const all = [...row.read, row.memory];
  return { lowest: Math.min(...all), highest: Math.max(...all) };
};

export const motorCurrentIecSheet = defineSheet({
  id: 'power/motor-current-iec',
  version: 1,
  inputs: { power: numberField('power', 'P', { least: 120, most: 75_000, table: typicalTable }) },
  outputs: {
    lowest: numberField('current', 'I_{\\min}'),
    highest: numberField('current', 'I_{\\max}'),
  },
  formula: ['I_{\\min}, I_{\\max} = \\text{tables}(P) \\text{ at } 400\\,\\mathrm{V}'],
  limits: [
    caution,
    always('TYPICAL_ONLY'),
    { code: 'TYPICAL_FROM_MEMORY', broken: ({ power }) => typicalRow(power)?.read.length === 0 },
  ],
  sources: [typicalTable],
  check: ({ power }) =>
    typicalRow(power) === undefined
      ? [
          offTable(
            'power',
            power,
            typicalRows.map(({ kilowatts }) => `${kilowatts} kW`),
            typicalTable,
          ),
        ]
      : [],
  compute: ({ power }: { readonly power: number }) => typicalCurrents(power)!,
});

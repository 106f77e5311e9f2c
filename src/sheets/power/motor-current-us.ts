import type { Problem } from '../../quantity/problem.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { offTable } from '../table-problem.ts';
import { always, caution } from './caution.ts';
import {
  columns,
  type FullLoadRow,
  fullLoadTables,
  otherPrints,
  singlePhaseRows,
  threePhaseRows,
} from './full-load-currents.ts';
import { horsepower, horsepowerRow } from './horsepower.ts';

export type Phases = 'three-phase' | 'single-phase';

const rowsOf = (phases: Phases): readonly FullLoadRow[] =>
  phases === 'three-phase' ? threePhaseRows : singlePhaseRows;

/** Place of the table column that covers a voltage, or -1. */
const columnOf = (voltage: number): number =>
  columns.findIndex(({ least, most }) => voltage >= least && voltage <= most);

/**
 * Table full-load current of a motor by US rules: what sizes its wires and its short-circuit device.
 *
 * Method   row of the plate rating, column of the motor's voltage; no value between rows
 * Symbols  power    scalar  W, one of the ratings 1/2 to 100 hp (single phase to 5 hp)
 *          voltage  scalar  V, of the motor's column or of the system ranges 110-120, 220-240, 440-480, 550-600
 * Returns  A; undefined where the table has no such figure
 * Assumes  ordinary induction motor; not low speed, high torque or several speeds
 * Cost     O(rows)
 * Source   NEC tables 430.248 and 430.250
 */
export const motorCurrentUs = (power: number, voltage: number, phases: Phases): number | undefined => {
  const rows = rowsOf(phases);
  const row =
    rows[
      horsepowerRow(
        power,
        rows.map(({ hp }) => hp),
      )
    ];
  return row?.amperes[columnOf(voltage)];
};

interface MotorCurrentUsInputs {
  readonly power: number;
  readonly voltage: number;
  readonly phases: Phases;
}

const otherPrint = ({ power, voltage, phases }: MotorCurrentUsInputs) =>
  phases === 'three-phase'
    ? otherPrints.find(
        (print) =>
          horsepowerRow(power, [print.hp]) === 0 && columns[columnOf(voltage)]?.voltage === print.voltage,
      )
    : undefined;

export const motorCurrentUsSheet = defineSheet({
  id: 'power/motor-current-us',
  version: 1,
  inputs: {
    power: numberField('power', 'P', { least: 0.5 * horsepower, most: 100 * 746, table: fullLoadTables }),
    voltage: numberField('voltage', 'U', { least: 110, most: 600, table: fullLoadTables }),
    phases: choiceField<Phases>('\\text{phases}', ['three-phase', 'single-phase']),
  },
  outputs: {
    current: numberField('current', 'I_{\\mathrm{FLC}}'),
    column: numberField('voltage', 'U_{\\text{column}}'),
  },
  formula: ['I_{\\mathrm{FLC}} = \\text{table}(P, U)'],
  limits: [
    caution,
    always('NEC_430_248'),
    always('TABLE_CURRENT_NOT_NAMEPLATE'),
    always('ORDINARY_MOTORS'),
    {
      code: 'FULL_LOAD_COPIES_DIFFER',
      broken: (inputs) => otherPrint(inputs) !== undefined,
      parts: (inputs, { current }) => ({ taken: current, other: otherPrint(inputs)?.amperes ?? 0 }),
    },
  ],
  sources: [fullLoadTables],
  check: ({ power, voltage, phases }): readonly Problem[] => {
    const rows = rowsOf(phases);
    const column = columnOf(voltage);
    const ratings = rows.map(({ hp }) => hp);
    const place = horsepowerRow(power, ratings);
    const held = rows.filter(({ amperes }) => amperes[column] !== undefined);
    const covered = columns
      .filter((_, i) => rows.some(({ amperes }) => amperes[i] !== undefined))
      .map(({ least, most, voltage: plate }) => (most - least > 1 ? `${least} to ${most} V` : `${plate} V`));
    return [
      ...(held.length === 0 ? [offTable('voltage', voltage, covered, fullLoadTables)] : []),
      ...(place < 0 || (held.length > 0 && rows[place]?.amperes[column] === undefined)
        ? [
            offTable(
              'power',
              power,
              (held.length > 0 ? held : rows).map(({ hp }) => `${hp} hp`),
              fullLoadTables,
            ),
          ]
        : []),
    ];
  },
  compute: (i: MotorCurrentUsInputs) => ({
    current: motorCurrentUs(i.power, i.voltage, i.phases)!,
    column: columns[columnOf(i.voltage)]!.voltage,
  }),
});

import type { Problem } from '../../quantity/problem.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { normalFlows } from './bounds.ts';
import { type DryerTable, dryerFactors, factorAt } from './dryer-factors.ts';
import { dryerManualA, dryerManualB } from './sources.ts';

interface DryerState {
  readonly pressure: number;
  readonly ambient: number;
  readonly inlet: number;
  readonly dewPoint: number;
}

interface DryerCapacityInputs extends DryerState {
  readonly table: DryerTable;
  readonly ratedFlow: number;
  readonly flow: number;
}

const columns = { pressure: 'bar(g)', ambient: 'degC', inlet: 'degC', dewPoint: 'degC' } as const;
type Column = keyof typeof columns;

const inColumn = (name: Column, value: number): number =>
  name === 'pressure' ? value / 1e5 : value - 273.15;

/**
 * Capacity of a refrigerated dryer away from its rating point, as a share of the rated one.
 *
 * Method   F = F1(pressure) F2(ambient) F3(inlet) F4(dew point), each straight between the columns of its table
 * Symbols  pressure  Pa gauge;  ambient, inlet, dewPoint  K
 * Returns  ratio; NaN off the table
 * Cost     O(columns)
 * Source   manuals of two dryers, read; they differ because their rating points do
 */
export const dryerFactor = (table: DryerTable, state: DryerState): number =>
  (Object.keys(columns) as Column[]).reduce(
    (product, name) => product * factorAt(dryerFactors[table][name], inColumn(name, state[name])),
    1,
  );

const offTable = (table: DryerTable, state: DryerState): Problem[] =>
  (Object.keys(columns) as Column[]).flatMap((name) => {
    const { at, below } = dryerFactors[table][name];
    const value = inColumn(name, state[name]);
    if (!Number.isNaN(factorAt(dryerFactors[table][name], value))) return [];
    const range = `${below ? '' : `${at[0]} to `}${below ? 'up to ' : ''}${at[at.length - 1]} ${columns[name]}`;
    return [{ code: 'DRYER_OFF_TABLE', path: name, given: state[name], allowed: range, parts: { table } }];
  });

const other = { A: 'B', B: 'A' } as const;

export const dryerCapacitySheet = defineSheet({
  id: 'air/dryer-capacity',
  version: 1,
  inputs: {
    table: choiceField<DryerTable>('\\text{table}', ['A', 'B']),
    ratedFlow: numberField('normalAirFlow', 'q_r', normalFlows),
    // both tables end at the same pressures and dew points, but for the rounding of a conversion
    pressure: numberField('gaugePressure', 'p', { least: 3.9995e5, most: 14.0005e5 }),
    ambient: numberField('temperature', 'T_a', { least: 253.15, most: 373.15 }),
    inlet: numberField('temperature', 'T_i', { least: 253.15, most: 373.15 }),
    dewPoint: numberField('temperature', 'T_d', { least: 276.1495, most: 283.1505 }),
    flow: numberField('normalAirFlow', 'q', normalFlows),
  },
  outputs: {
    factor: numberField('ratio', 'F'),
    capacity: numberField('normalAirFlow', 'q_c'),
    ratedNeeded: numberField('normalAirFlow', 'q_{r,n}'),
  },
  formula: ['F = F_1(p)\\, F_2(T_a)\\, F_3(T_i)\\, F_4(T_d)', 'q_c = F q_r, \\quad q_{r,n} = \\frac{q}{F}'],
  limits: [
    { code: 'DRYER_TOO_SMALL', broken: ({ flow }, { capacity }) => flow > capacity * (1 + 1e-9) },
    {
      code: 'DRYER_TABLES_DIFFER',
      broken: () => true,
      parts: (i, { factor }) => {
        const theirs = dryerFactor(other[i.table], i);
        return {
          table: i.table,
          factor: factor.toFixed(3),
          other: other[i.table],
          theirs: Number.isNaN(theirs) ? 'nothing (off its columns)' : theirs.toFixed(3),
        };
      },
    },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [dryerManualA, dryerManualB],
  check: (i) => offTable(i.table, i),
  compute: (i: DryerCapacityInputs) => {
    const factor = dryerFactor(i.table, i);
    return { factor, capacity: factor * i.ratedFlow, ratedNeeded: i.flow / factor };
  },
});

import type { Problem } from '../../quantity/problem.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
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

const columns = ['pressure', 'ambient', 'inlet', 'dewPoint'] as const;
type Column = (typeof columns)[number];
const manuals: Readonly<Record<DryerTable, Source>> = { A: dryerManualA, B: dryerManualB };
/** Both tables end at the same pressures and the same dew points. */
const bothManuals: Source = {
  title: 'manuals of two refrigerated dryers, rated at 38 and 35 degC inlet',
  mark: 'read',
};

const inColumn = (name: Column, value: number): number =>
  name === 'pressure' ? value / 1e5 : value - 273.15;

const inSi = (name: Column, value: number): number =>
  name === 'pressure' ? value * 1e5 : Number((value + 273.15).toFixed(2));

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
  columns.reduce(
    (product, name) => product * factorAt(dryerFactors[table][name], inColumn(name, state[name])),
    1,
  );

const offTable = (table: DryerTable, state: DryerState): Problem[] =>
  columns.flatMap((name) => {
    const { at, below } = dryerFactors[table][name];
    const value = inColumn(name, state[name]);
    if (!Number.isNaN(factorAt(dryerFactors[table][name], value))) return [];
    const most = `<= ${inSi(name, at.at(-1)!)}`;
    const range = below ? most : `>= ${inSi(name, at[0]!)}, ${most}`;
    return [beyondTable(name, state[name], range, manuals[table])];
  });

const other = { A: 'B', B: 'A' } as const;

export const dryerCapacitySheet = defineSheet({
  id: 'air/dryer-capacity',
  version: 1,
  inputs: {
    table: choiceField<DryerTable>('\\text{table}', ['A', 'B']),
    ratedFlow: numberField('normalAirFlow', 'q_r', normalFlows),
    // but for the rounding of a conversion
    pressure: numberField('gaugePressure', 'p', { least: 3.9995e5, most: 14.0005e5, table: bothManuals }),
    ambient: numberField('temperature', 'T_a', { least: 253.15, most: 373.15 }),
    inlet: numberField('temperature', 'T_i', { least: 253.15, most: 373.15 }),
    dewPoint: numberField('temperature', 'T_d', { least: 276.1495, most: 283.1505, table: bothManuals }),
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

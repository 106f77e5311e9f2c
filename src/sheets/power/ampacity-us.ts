import type { Problem } from '../../quantity/problem.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { beyondTable, offTable } from '../table-problem.ts';
import { ambients } from './bounds.ts';
import { always, caution } from './caution.ts';
import { ampacityTable, type UsConductor, usConductor, usSizes } from './us-conductors.ts';
import {
  correctionTables,
  type TemperatureColumn,
  temperatureColumns,
  usAmbientFactor,
  usGroupFactor,
} from './us-correction-factors.ts';

export type AmpacityEdition = 'from-2011' | 'to-2008';
export const ampacityEditions: readonly AmpacityEdition[] = ['from-2011', 'to-2008'];
export type TerminalColumn = '60' | '75';

const columnAmpacity = (
  conductor: UsConductor,
  column: TemperatureColumn,
  edition: AmpacityEdition,
): number =>
  (edition === 'from-2011' ? conductor.ampacity : conductor.olderAmpacity)[
    temperatureColumns.indexOf(column)
  ]!;

export interface UsAmpacity {
  readonly table: number;
  readonly corrected: number;
  readonly terminals: number;
  readonly allowed: number;
}

/**
 * What a copper conductor may carry by US rules.
 *
 * Method   corrected = table(insulation) k_ambient k_group; allowed = the lesser of it and table(terminals)
 * Symbols  size        one of `usSizes`
 *          insulation  column, degC of the insulation;  terminals  column of the terminals at both ends
 *          ambient     scalar  K;  conductors  count that carry current in the raceway
 * Returns  A: table, corrected, terminals, allowed; undefined where the ambient is beyond the table
 * Cost     O(sizes)
 * Source   NEC table 310.16, ambient and grouping tables, 110.14(C)
 */
export const ampacityUs = (
  size: string,
  insulation: TemperatureColumn,
  terminals: TerminalColumn,
  ambient: number,
  conductors: number,
  edition: AmpacityEdition,
): UsAmpacity | undefined => {
  const factor = usAmbientFactor(ambient, insulation);
  if (factor === undefined) return undefined;
  const conductor = usConductor(size);
  const table = columnAmpacity(conductor, insulation, edition);
  const corrected = table * factor * usGroupFactor(conductors);
  const atTerminals = columnAmpacity(conductor, terminals, edition);
  return { table, corrected, terminals: atTerminals, allowed: Math.min(corrected, atTerminals) };
};

export interface ConductorPlace {
  readonly insulation: TemperatureColumn;
  readonly terminals: TerminalColumn;
  readonly ambient: number;
  readonly conductors: number;
  readonly edition: AmpacityEdition;
}

/** Where a conductor lies and what it is made of; the same fields wherever US conductors are asked for. */
export const conductorPlaceFields = {
  insulation: choiceField<TemperatureColumn>('\\theta_{\\text{ins}}', temperatureColumns),
  terminals: choiceField<TerminalColumn>('\\theta_{\\text{term}}', ['60', '75']),
  ambient: numberField('temperature', '\\theta_a', { ...ambients, assumed: 303.15 }),
  conductors: numberField('count', 'n', { least: 1, most: 200, assumed: 3 }),
  edition: choiceField<AmpacityEdition>('\\text{edition}', ampacityEditions),
} as const;

/** Insulation under its terminals' column, or an ambient that the table doesn't hold. */
export const placeProblems = (i: ConductorPlace): Problem[] => [
  ...(Number(i.insulation) < Number(i.terminals)
    ? [offTable('terminals', i.terminals, [i.insulation], ampacityTable)]
    : []),
  ...(usAmbientFactor(i.ambient, i.insulation) === undefined
    ? [beyondTable('ambient', i.ambient, `<= ${i.insulation === '60' ? 328.15 : 343.15}`, correctionTables)]
    : []),
];

interface AmpacityUsInputs extends ConductorPlace {
  readonly size: string;
}

export const ampacityUsSheet = defineSheet({
  id: 'power/ampacity-us',
  version: 1,
  inputs: {
    size: { ...choiceField('\\text{size}', usSizes), table: ampacityTable },
    ...conductorPlaceFields,
  },
  outputs: {
    table: numberField('current', 'I_{\\text{table}}'),
    corrected: numberField('current', 'I_{\\text{corr}}'),
    terminals: numberField('current', 'I_{\\text{term}}'),
    allowed: numberField('current', 'I_z'),
  },
  formula: [
    'I_{\\text{corr}} = I_{\\text{table}}(\\theta_{\\text{ins}})\\, k_a\\, k_n, \\quad I_{\\text{term}} = I_{\\text{table}}(\\theta_{\\text{term}})',
    'I_z = \\min ( I_{\\text{corr}}, I_{\\text{term}} )',
  ],
  limits: [
    caution,
    always('NEC_310_16'),
    { code: 'TERMINALS_75', broken: ({ terminals }) => terminals === '75' },
    {
      code: 'EDITIONS_DIFFER',
      broken: (i) => other(i) !== undefined && other(i) !== ampacityAt(i, i.edition),
      parts: (i) => ({ other: other(i) ?? 0 }),
    },
    {
      code: 'SMALL_CONDUCTOR',
      broken: ({ size }) => ['14 AWG', '12 AWG', '10 AWG'].includes(size),
    },
  ],
  sources: [ampacityTable, correctionTables],
  check: placeProblems,
  compute: (i: AmpacityUsInputs) =>
    ampacityUs(i.size, i.insulation, i.terminals, i.ambient, i.conductors, i.edition)!,
});

const ampacityAt = (i: AmpacityUsInputs, edition: AmpacityEdition): number | undefined =>
  ampacityUs(i.size, i.insulation, i.terminals, i.ambient, i.conductors, edition)?.allowed;
const other = (i: AmpacityUsInputs): number | undefined =>
  ampacityAt(i, i.edition === 'from-2011' ? 'to-2008' : 'from-2011');

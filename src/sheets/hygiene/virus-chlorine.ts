import type { Problem } from '../../quantity/problem.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { between, type LookUp, lookUps, tablePlace } from '../table-place.ts';
import { beyondTable } from '../table-problem.ts';
import { logs, times } from './bounds.ts';
import { always, authority, chemicalCaution } from './caution.ts';
import { type CtAnswer, ctAnswer } from './ct-answer.ts';
import { type CtTable, virusAlkaline, virusNeutral } from './ct-tables.ts';
import { celsius, kelvin, milligramMinute } from './ct-units.ts';
import { ctInterpolation, epaTables } from './sources.ts';

/**
 * CT of a table over temperature.
 *
 * Method   cautious: the next colder column; interpolated: straight between; over the last column the last
 * Symbols  T  temperature  scalar  K  not under the first column, which is refused before
 * Returns  CT, kg s/m3
 * Cost     O(1)
 * Source   EPA 815-R-20-003, 2020, appendix B
 */
export const tableCt = (
  { temperatures: printed, ct }: CtTable,
  temperature: number,
  lookUp: LookUp,
): number =>
  milligramMinute *
  between(tablePlace(printed, celsius(temperature), lookUp, 'lower'), (column) => ct[column]!);

/** Colder than the first column: nothing is extrapolated. */
export const coldProblems = ({ temperatures: printed }: CtTable, temperature: number): readonly Problem[] =>
  celsius(temperature) < printed[0]! - 1e-6
    ? [beyondTable('temperature', temperature, `>= ${kelvin(printed[0]!)}`, epaTables)]
    : [];

/** Table of viruses and free chlorine at a pH: 6 to 9 share a column, above it that of pH 10 holds. */
export const virusTable = (acidity: number): CtTable => (acidity <= 9 + 1e-9 ? virusNeutral : virusAlkaline);

interface VirusInputs {
  readonly temperature: number;
  readonly acidity: number;
  readonly chlorine: number;
  readonly time: number;
  readonly logs: number;
  readonly lookUp: LookUp;
}

export const virusChlorineSheet = defineSheet<VirusInputs, CtAnswer>({
  id: 'hygiene/virus-chlorine',
  version: 1,
  inputs: {
    temperature: numberField('temperature', 'T', { least: 273.15, most: 373.15 }),
    acidity: numberField('acidity', '\\mathrm{pH}', { least: 5, most: 11 }),
    chlorine: numberField('soluteConcentration', 'C', { least: 1e-6, most: 250 }),
    time: numberField('time', 't', { ...times, assumed: 0 }),
    logs: numberField('ratio', 'L', { ...logs, assumed: 4 }),
    lookUp: choiceField<LookUp>('\\text{look-up}', lookUps, 'cautious'),
  },
  outputs: {
    needed: numberField('concentrationTime', '\\mathrm{CT}_{\\mathrm{req}}'),
    neededTime: numberField('time', 't_{\\mathrm{req}}'),
    ct: numberField('concentrationTime', '\\mathrm{CT}'),
    ratio: numberField('ratio', '\\mathrm{CT} / \\mathrm{CT}_4'),
    reached: numberField('ratio', 'L_t'),
  },
  formula: [
    '\\mathrm{CT}_{\\mathrm{req}} = \\mathrm{CT}_4(T, \\mathrm{pH}) \\frac{L}{4}, \\quad t_{\\mathrm{req}} = \\frac{\\mathrm{CT}_{\\mathrm{req}}}{C}',
    '\\mathrm{CT} = C t, \\quad L_t = 4 \\frac{C t}{\\mathrm{CT}_4}',
  ],
  limits: [
    authority,
    { code: 'CT_WARM', broken: ({ temperature }) => celsius(temperature) > 25 + 1e-6 },
    { code: 'CT_VIRUS_PH_10', broken: ({ acidity }) => acidity > 9 + 1e-9 && acidity < 10 - 1e-9 },
    { code: 'CT_INTERPOLATED', broken: ({ lookUp }) => lookUp === 'interpolated' },
    always('CT_NOT_FOR_RINSE'),
    always('CT_RESIDUAL'),
    chemicalCaution,
  ],
  sources: [epaTables, ctInterpolation],
  check: ({ temperature, acidity }) => [
    ...coldProblems(virusNeutral, temperature),
    ...(acidity < 6 - 1e-9 || acidity > 10 + 1e-9
      ? [beyondTable('acidity', acidity, '>= 6, <= 10', epaTables)]
      : []),
  ],
  compute: (i) => {
    const table = virusTable(i.acidity);
    return ctAnswer(tableCt(table, i.temperature, i.lookUp), table.logs, i.logs, i.chlorine, i.time);
  },
});

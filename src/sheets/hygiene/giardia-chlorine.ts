import type { Problem } from '../../quantity/problem.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet, type Limit } from '../frame.ts';
import { between, type LookUp, lookUps, tablePlace } from '../table-place.ts';
import { beyondTable } from '../table-problem.ts';
import { acidities, logs, temperatures, times } from './bounds.ts';
import { always, authority, chemicalCaution } from './caution.ts';
import { type CtAnswer, ctAnswer } from './ct-answer.ts';
import { celsius, milligram, milligramMinute } from './ct-units.ts';
import {
  giardiaAcidities,
  giardiaChlorine,
  giardiaTableLogs,
  giardiaTables,
  giardiaTemperatures,
} from './giardia-table.ts';
import { cfr141, epaLookUp, epaTables } from './sources.ts';

/**
 * CT for 3 logs of Giardia by free chlorine.
 *
 * Method   cautious: temperature down, pH up, chlorine up to the printed ones; interpolated: trilinear
 * Symbols  T   temperature  scalar  K      over 25 degC counted as 25; under 0.5 as the first table
 *          pH  acidity      scalar         to 9; under 6 as 6
 *          C   chlorine     scalar  kg/m3  over 3 mg/L counted as 3, under 0.4 as 0.4
 * Returns  CT, kg s/m3
 * Cost     O(1)
 * Source   EPA 815-R-20-003, 2020, appendix B
 */
export const giardiaCt = (temperature: number, acidity: number, chlorine: number, lookUp: LookUp): number => {
  const t = tablePlace(giardiaTemperatures, celsius(temperature), lookUp, 'lower');
  const c = tablePlace(giardiaChlorine, chlorine / milligram, lookUp, 'upper');
  const p = tablePlace(giardiaAcidities, acidity, lookUp, 'upper');
  return (
    milligramMinute *
    between(t, (table) => between(c, (row) => between(p, (column) => giardiaTables[table]![row]![column]!)))
  );
};

/** Above pH 9 the tables do not apply: nothing is extrapolated. */
export const giardiaAcidityProblems = (acidity: number): readonly Problem[] =>
  acidity > 9 + 1e-9 ? [beyondTable('acidity', acidity, '<= 9', epaTables)] : [];

interface GiardiaConditions {
  readonly temperature: number;
  readonly acidity: number;
  readonly chlorine: number;
}

/** Where a table's end is taken for a value that lies beyond it. */
export const giardiaEnds: readonly Limit<GiardiaConditions, unknown>[] = [
  { code: 'CT_CHLORINE_HIGH', broken: ({ chlorine }) => chlorine > 3 * milligram * (1 + 1e-9) },
  { code: 'CT_CHLORINE_LOW', broken: ({ chlorine }) => chlorine < 0.4 * milligram * (1 - 1e-9) },
  { code: 'CT_WARM', broken: ({ temperature }) => celsius(temperature) > 25 + 1e-6 },
  { code: 'CT_COLD', broken: ({ temperature }) => celsius(temperature) < 0.5 - 1e-6 },
  { code: 'CT_PH_LOW', broken: ({ acidity }) => acidity < 6 - 1e-9 },
];

interface GiardiaInputs extends GiardiaConditions {
  readonly time: number;
  readonly logs: number;
  readonly lookUp: LookUp;
}

export const giardiaChlorineSheet = defineSheet<GiardiaInputs, CtAnswer>({
  id: 'hygiene/giardia-chlorine',
  version: 1,
  inputs: {
    temperature: numberField('temperature', 'T', temperatures),
    acidity: numberField('acidity', '\\mathrm{pH}', acidities),
    chlorine: numberField('soluteConcentration', 'C', { least: 1e-6, most: 250 }),
    time: numberField('time', 't', { ...times, assumed: 0 }),
    logs: numberField('ratio', 'L', { ...logs, assumed: giardiaTableLogs }),
    lookUp: choiceField<LookUp>('\\text{look-up}', lookUps, 'cautious'),
  },
  outputs: {
    needed: numberField('concentrationTime', '\\mathrm{CT}_{\\mathrm{req}}'),
    neededTime: numberField('time', 't_{\\mathrm{req}}'),
    ct: numberField('concentrationTime', '\\mathrm{CT}'),
    ratio: numberField('ratio', '\\mathrm{CT} / \\mathrm{CT}_3'),
    reached: numberField('ratio', 'L_t'),
  },
  formula: [
    '\\mathrm{CT}_{\\mathrm{req}} = \\mathrm{CT}_3(T, \\mathrm{pH}, C) \\frac{L}{3}, \\quad t_{\\mathrm{req}} = \\frac{\\mathrm{CT}_{\\mathrm{req}}}{C}',
    '\\mathrm{CT} = C t, \\quad L_t = 3 \\frac{C t}{\\mathrm{CT}_3}',
  ],
  limits: [
    authority,
    ...giardiaEnds,
    { code: 'CT_INTERPOLATED', broken: ({ lookUp }) => lookUp === 'interpolated' },
    always('CT_NOT_FOR_RINSE'),
    always('CT_RESIDUAL'),
    chemicalCaution,
  ],
  sources: [epaTables, epaLookUp, cfr141],
  check: ({ acidity }) => giardiaAcidityProblems(acidity),
  compute: (i) =>
    ctAnswer(
      giardiaCt(i.temperature, i.acidity, i.chlorine, i.lookUp),
      giardiaTableLogs,
      i.logs,
      i.chlorine,
      i.time,
    ),
});

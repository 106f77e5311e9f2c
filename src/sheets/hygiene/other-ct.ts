import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { type LookUp, lookUps } from '../table-place.ts';
import { logs, temperatures, times } from './bounds.ts';
import { always, authority, chemicalCaution } from './caution.ts';
import { type CtAnswer, ctAnswer } from './ct-answer.ts';
import {
  type OtherDisinfectant,
  otherDisinfectants,
  otherTables,
  type Target,
  targets,
} from './ct-tables.ts';
import { celsius } from './ct-units.ts';
import { epaTables } from './sources.ts';
import { coldProblems, tableCt } from './virus-chlorine.ts';

interface OtherInputs {
  readonly disinfectant: OtherDisinfectant;
  readonly target: Target;
  readonly temperature: number;
  readonly residual: number;
  readonly time: number;
  readonly logs: number;
  readonly lookUp: LookUp;
}

export const otherCtSheet = defineSheet<OtherInputs, CtAnswer>({
  id: 'hygiene/other-ct',
  version: 1,
  inputs: {
    disinfectant: choiceField<OtherDisinfectant>('\\text{disinfectant}', otherDisinfectants),
    target: choiceField<Target>('\\text{target}', targets),
    temperature: numberField('temperature', 'T', temperatures),
    residual: numberField('soluteConcentration', 'C', { least: 1e-6, most: 250 }),
    time: numberField('time', 't', { ...times, assumed: 0 }),
    logs: numberField('ratio', 'L', { ...logs, assumed: 3 }),
    lookUp: choiceField<LookUp>('\\text{look-up}', lookUps, 'cautious'),
  },
  outputs: {
    needed: numberField('concentrationTime', '\\mathrm{CT}_{\\mathrm{req}}'),
    neededTime: numberField('time', 't_{\\mathrm{req}}'),
    ct: numberField('concentrationTime', '\\mathrm{CT}'),
    ratio: numberField('ratio', '\\mathrm{CT} / \\mathrm{CT}_k'),
    reached: numberField('ratio', 'L_t'),
  },
  formula: [
    '\\mathrm{CT}_{\\mathrm{req}} = \\mathrm{CT}_k(T) \\frac{L}{k}, \\quad k = 3 \\text{ (Giardia)}, 4 \\text{ (viruses)}',
    '\\mathrm{CT} = C t, \\quad L_t = k \\frac{C t}{\\mathrm{CT}_k}, \\quad t_{\\mathrm{req}} = \\frac{\\mathrm{CT}_{\\mathrm{req}}}{C}',
  ],
  limits: [
    authority,
    { code: 'CT_WARM', broken: ({ temperature }) => celsius(temperature) > 25 + 1e-6 },
    { code: 'CT_INTERPOLATED', broken: ({ lookUp }) => lookUp === 'interpolated' },
    { code: 'CT_RULE_NO_LOGS', broken: ({ disinfectant }) => disinfectant === 'ozone' },
    always('CT_NOT_FOR_RINSE'),
    always('CT_RESIDUAL'),
    chemicalCaution,
  ],
  sources: [epaTables],
  check: ({ disinfectant, target, temperature }) =>
    coldProblems(otherTables[disinfectant][target], temperature),
  compute: (i) => {
    const table = otherTables[i.disinfectant][i.target];
    return ctAnswer(tableCt(table, i.temperature, i.lookUp), table.logs, i.logs, i.residual, i.time);
  },
});

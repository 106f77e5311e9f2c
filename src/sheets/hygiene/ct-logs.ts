import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { times } from './bounds.ts';
import { always, authority, chemicalCaution } from './caution.ts';
import { cfr141 } from './sources.ts';

interface CtLogsInputs {
  readonly residuals: readonly number[];
  readonly times: readonly number[];
  readonly tableCts: readonly number[];
  readonly tableLogs: number;
}

/**
 * Logs of inactivation of several stretches in a row.
 *
 * Method   L = L_table sum_i C_i t_i/CT_i
 * Symbols  C_i      residuals  [n]  kg/m3    at the end of each stretch
 *          t_i      times      [n]  s
 *          CT_i     tableCts   [n]  kg s/m3  > 0, of the table at the stretch's temperature and pH
 *          L_table  tableLogs  scalar        3 for Giardia, 4 for viruses
 * Returns  sum of ratios; logs are that many times L_table
 * Cost     O(n)
 * Source   40 CFR 141.534
 */
export const sumOfRatios = (
  residuals: readonly number[],
  contacts: readonly number[],
  tableCts: readonly number[],
): number => residuals.reduce((sum, residual, i) => sum + (residual * contacts[i]!) / tableCts[i]!, 0);

export const ctLogsSheet = defineSheet({
  id: 'hygiene/ct-logs',
  version: 1,
  inputs: {
    residuals: listField('soluteConcentration', 'C_i', { least: 0, most: 250 }),
    times: listField('time', 't_i', times),
    tableCts: listField('concentrationTime', '\\mathrm{CT}_i', { least: 1e-6, most: 1e6 }),
    tableLogs: numberField('ratio', 'L_k', { above: 0, most: 10, assumed: 3 }),
  },
  outputs: {
    cts: listField('concentrationTime', 'C_i t_i'),
    ratio: numberField('ratio', '\\sum_i C_i t_i / \\mathrm{CT}_i'),
    reached: numberField('ratio', 'L'),
  },
  formula: ['L = L_k \\sum_i \\frac{C_i t_i}{\\mathrm{CT}_i}'],
  limits: [authority, always('CT_NOT_FOR_RINSE'), always('CT_RESIDUAL'), chemicalCaution],
  sources: [cfr141],
  check: ({ residuals, times: contacts, tableCts }) => listLengths({ residuals, times: contacts, tableCts }),
  compute: ({ residuals, times: contacts, tableCts, tableLogs }: CtLogsInputs) => {
    const ratio = sumOfRatios(residuals, contacts, tableCts);
    return {
      cts: residuals.map((residual, i) => residual * contacts[i]!),
      ratio,
      reached: tableLogs * ratio,
    };
  },
});

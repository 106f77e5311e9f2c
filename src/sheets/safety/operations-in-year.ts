import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { always, guardingCaution } from './caution.ts';
import { iso13849 } from './sources.ts';

interface OperationsInputs {
  readonly days: number;
  readonly dailyTime: number;
  readonly cycle: number;
}

/**
 * Operations of a part in a year.
 *
 * Method   n_op = d_op h_op/t_cycle
 * Symbols  d_op     days       count   in a year
 *          h_op     dailyTime  scalar  s in a day
 *          t_cycle  cycle      scalar  s between two operations of the part
 * Returns  operations in a year
 * Cost     O(1)
 * Source   ISO 13849-1:2006 annex C
 */
export const operationsInYear = ({ days, dailyTime, cycle }: OperationsInputs): number =>
  (days * dailyTime) / cycle;

export const operationsInYearSheet = defineSheet({
  id: 'safety/operations-in-year',
  version: 1,
  inputs: {
    days: numberField('count', 'd_{op}', { above: 0, most: 366 }),
    dailyTime: numberField('time', 'h_{op}', { above: 0, most: 86_400 }),
    cycle: numberField('time', 't_{cycle}', { least: 0.01, most: 31_622_400 }),
  },
  outputs: { operations: numberField('count', 'n_{op}') },
  formula: ['n_{op} = \\frac{d_{op} h_{op}}{t_{cycle}}'],
  limits: [guardingCaution, always('OPERATIONS_OF_THE_PART')],
  sources: [iso13849],
  compute: (i: OperationsInputs) => ({ operations: operationsInYear(i) }),
});

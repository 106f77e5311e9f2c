import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { efficiencies, powers, shares } from './bounds.ts';
import { caution } from './caution.ts';
import { circuitTheory } from './sources.ts';

/**
 * Power that several motors take from the supply on the mean: all of it ends as heat where they stand.
 *
 * Method   P_1 = sum P_i d_i/eta_i
 * Symbols  P_i    shaftPowers   [n]  W  of the load
 *          eta_i  efficiencies  [n]
 *          d_i    duties        [n]  share of the time
 * Returns  W
 * Cost     O(n)
 * Source   definition of efficiency
 */
export const motorsInput = (
  shaftPowers: readonly number[],
  efficienciesOf: readonly number[],
  duties: readonly number[],
): number => shaftPowers.reduce((sum, power, i) => sum + (power / efficienciesOf[i]!) * duties[i]!, 0);

interface MotorsInputInputs {
  readonly shaftPowers: readonly number[];
  readonly efficiencies: readonly number[];
  readonly duties: readonly number[];
}

export const motorsInputSheet = defineSheet({
  id: 'power/motors-input',
  version: 1,
  inputs: {
    shaftPowers: listField('power', 'P_i', powers),
    efficiencies: listField('ratio', '\\eta_i', efficiencies),
    duties: listField('ratio', 'd_i', shares),
  },
  outputs: { power: numberField('power', 'P_1') },
  formula: ['P_1 = \\sum_i \\frac{P_i}{\\eta_i} d_i'],
  limits: [caution],
  sources: [circuitTheory],
  check: ({ shaftPowers, efficiencies: each, duties }) =>
    listLengths({ shaftPowers, efficiencies: each, duties }),
  compute: (i: MotorsInputInputs) => ({ power: motorsInput(i.shaftPowers, i.efficiencies, i.duties) }),
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents, voltages } from './bounds.ts';
import { caution } from './caution.ts';
import { circuitTheory } from './sources.ts';

/**
 * Current before a transformer that gives a current after it.
 *
 * Method   I_1 = I_2 U_2/U_1
 * Symbols  I_2  current    scalar  A  after it
 *          U_2  secondary  scalar  V;  U_1  primary  scalar  V
 * Returns  A
 * Assumes  the same apparent power on both sides: magnetising current and losses left out
 * Cost     O(1)
 * Source   S = sqrt(3) U I on both sides
 */
export const throughTransformer = (current: number, secondary: number, primary: number): number =>
  (current * secondary) / primary;

interface ThroughTransformerInputs {
  readonly current: number;
  readonly secondary: number;
  readonly primary: number;
}

export const throughTransformerSheet = defineSheet({
  id: 'power/through-transformer',
  version: 1,
  inputs: {
    current: numberField('current', 'I_2', currents),
    secondary: numberField('voltage', 'U_2', voltages),
    primary: numberField('voltage', 'U_1', voltages),
  },
  outputs: { current: numberField('current', 'I_1') },
  formula: ['I_1 = I_2 \\frac{U_2}{U_1}'],
  limits: [caution],
  sources: [circuitTheory],
  compute: (i: ThroughTransformerInputs) => ({
    current: throughTransformer(i.current, i.secondary, i.primary),
  }),
});

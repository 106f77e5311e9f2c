import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Length of straight pipe that loses what fittings of a loss coefficient lose.
 *
 * Method   L_e = K D/f
 * Symbols  K  coefficient     scalar  1  sum of the loss coefficients
 *          D  bore            scalar  m  of the pipe in which they stand
 *          f  frictionFactor  scalar  1  Darcy, of that pipe at this flow, > 0
 * Returns  length, m
 * Cost     O(1)
 * Source   definition: K rho v^2/2 = f L_e/D rho v^2/2
 */
export const fittingEquivalent = (coefficient: number, bore: number, frictionFactor: number): number =>
  (coefficient * bore) / frictionFactor;

interface FittingEquivalentInputs {
  readonly coefficient: number;
  readonly bore: number;
  readonly frictionFactor: number;
}

export const fittingEquivalentSheet = defineSheet({
  id: 'air/fitting-equivalent',
  version: 1,
  inputs: {
    coefficient: numberField('ratio', 'K', { least: 0, most: 1e4 }),
    bore: numberField('length', 'D', bores),
    frictionFactor: numberField('ratio', 'f', { least: 0.003, most: 1, assumed: 0.02 }),
  },
  outputs: { length: numberField('length', 'L_e') },
  formula: ['L_e = \\frac{K D}{f}'],
  limits: [{ code: 'FITTING_FRICTION_FACTOR', broken: () => true }],
  sources: [derived],
  compute: (i: FittingEquivalentInputs) => ({
    length: fittingEquivalent(i.coefficient, i.bore, i.frictionFactor),
  }),
});

import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents } from './bounds.ts';
import { always, caution } from './caution.ts';
import { circuitTheory } from './sources.ts';

/**
 * Currents of several loads that run together.
 *
 * Method   I = sum I_i
 * Symbols  I_i  currents  [n]  A
 * Returns  A; never less than what flows: currents of another phase angle add up to less
 * Cost     O(n)
 * Source   Kirchhoff's current law with all phase angles taken as equal
 */
export const currentsTogether = (amperes: readonly number[]): number =>
  amperes.reduce((sum, one) => sum + one, 0);

export const currentsTogetherSheet = defineSheet({
  id: 'power/currents-together',
  version: 1,
  inputs: { currents: listField('current', 'I_i', { ...currents, fewest: 0 }) },
  outputs: { current: numberField('current', 'I') },
  formula: ['I = \\sum_i I_i'],
  limits: [caution, always('SUM_CONSERVATIVE')],
  sources: [circuitTheory],
  compute: (i: { readonly currents: readonly number[] }) => ({ current: currentsTogether(i.currents) }),
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents, parallels } from './bounds.ts';
import { always, caution } from './caution.ts';
import { circuitTheory } from './sources.ts';

/**
 * Current that parallel conductors of a phase may carry together.
 *
 * Method   I = n I_1
 * Symbols  I_1  each      scalar  A  of one conductor, as it is laid with the others
 *          n    parallel  scalar  conductors for each phase
 * Returns  A
 * Assumes  they share evenly: one length, size, material and way of laying
 * Cost     O(1)
 * Source   circuit theory
 */
export const parallelCurrent = (each: number, parallel: number): number => each * parallel;

interface ParallelInputs {
  readonly each: number;
  readonly parallel: number;
}

export const parallelConductorsSheet = defineSheet({
  id: 'power/parallel-conductors',
  version: 1,
  inputs: { each: numberField('current', 'I_1', currents), parallel: numberField('count', 'n', parallels) },
  outputs: { allowed: numberField('current', 'I') },
  formula: ['I = n I_1'],
  limits: [caution, always('PARALLEL_EVEN')],
  sources: [circuitTheory],
  compute: ({ each, parallel }: ParallelInputs) => ({ allowed: parallelCurrent(each, parallel) }),
});

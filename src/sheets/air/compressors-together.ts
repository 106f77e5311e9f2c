import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { actualFlows } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Free air of several compressors alike.
 *
 * Method   Q = n Q_1
 * Symbols  Q_1  freeAir  scalar  m3/s  of one, at its intake
 *          n    count    scalar  how many run
 * Returns  m3/s at the intake
 * Assumes  all of them run; one that is kept in reserve does not count
 * Cost     O(1)
 * Source   balance of mass
 */
export const compressorsTogether = (freeAir: number, count: number): number => freeAir * count;

interface CompressorsTogetherInputs {
  readonly freeAir: number;
  readonly count: number;
}

export const compressorsTogetherSheet = defineSheet({
  id: 'air/compressors-together',
  version: 1,
  inputs: {
    freeAir: numberField('actualAirFlow', 'Q_1', actualFlows),
    count: numberField('count', 'n', { least: 1, most: 100 }),
  },
  outputs: { together: numberField('actualAirFlow', 'Q') },
  formula: ['Q = n Q_1'],
  limits: [{ code: 'COMPRESSORS_ALL_RUN', broken: ({ count }) => count > 1 }],
  sources: [derived],
  compute: ({ freeAir, count }: CompressorsTogetherInputs) => ({
    together: compressorsTogether(freeAir, count),
  }),
});

import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows } from './bounds.ts';
import { arithmetic } from './sources.ts';

/**
 * Flow that is left of a stream of which some runs on elsewhere.
 *
 * Method   Q = max(0, Q_in - sum Q_i)
 * Symbols  Q_in  comesIn  scalar  m3/s
 *          Q_i   runsOn   [n]     m3/s
 * Returns  m3/s
 * Assumes  nothing is kept: the bath is full
 * Cost     O(n)
 * Source   balance of volume
 */
export const flowLeft = (comesIn: number, runsOn: readonly number[]): number =>
  Math.max(
    0,
    runsOn.reduce((left, flow) => left - flow, comesIn),
  );

interface FlowLeftInputs {
  readonly comesIn: number;
  readonly runsOn: readonly number[];
}

export const flowLeftSheet = defineSheet({
  id: 'water/flow-left',
  version: 1,
  inputs: {
    comesIn: numberField('volumeFlow', 'Q_{in}', flows),
    runsOn: listField('volumeFlow', 'Q_i', flows),
  },
  outputs: { left: numberField('volumeFlow', 'Q') },
  formula: ['Q = \\max \\left( 0, Q_{in} - \\sum_i Q_i \\right)'],
  limits: [
    {
      code: 'FLOW_MORE_RUNS_ON',
      broken: ({ comesIn, runsOn }) => runsOn.reduce((sum, flow) => sum + flow, 0) > comesIn * (1 + 1e-9),
    },
  ],
  sources: [arithmetic],
  compute: ({ comesIn, runsOn }: FlowLeftInputs) => ({ left: flowLeft(comesIn, runsOn) }),
});

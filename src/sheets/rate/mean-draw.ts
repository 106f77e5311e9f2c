import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { rates, volumes } from './bounds.ts';
import { definition } from './sources.ts';

/**
 * Flow that a line draws in the mean.
 *
 * Method   Q = R V
 * Symbols  R  rate    scalar  1/s  >= 0   bottles
 *          V  volume  scalar  m3   >= 0   a bottle, with what runs over
 * Returns  flow, m3/s
 * Assumes  the mean over many fills; within a fill the flow is higher
 * Cost     O(1)
 * Source   mass balance
 */
export const meanDraw = (rate: number, volume: number): number => rate * volume;

interface MeanDrawInputs {
  readonly rate: number;
  readonly volume: number;
}

export const meanDrawSheet = defineSheet({
  id: 'rate/mean-draw',
  version: 1,
  inputs: {
    rate: numberField('rate', 'R', rates),
    volume: numberField('volume', 'V', volumes),
  },
  outputs: { flow: numberField('volumeFlow', 'Q') },
  formula: ['Q = R\\, V'],
  limits: [{ code: 'DRAW_PEAK_IS_HIGHER', broken: () => true }],
  sources: [definition],
  compute: ({ rate, volume }: MeanDrawInputs) => ({ flow: meanDraw(rate, volume) }),
});

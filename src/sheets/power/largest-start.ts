import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents } from './bounds.ts';
import { always, caution } from './caution.ts';
import { circuitTheory } from './sources.ts';

/**
 * Line current while the largest motor starts and everything else runs.
 *
 * Method   I = I_r + I_s, added as numbers
 * Symbols  I_r  running  scalar  A  of all others together
 *          I_s  start    scalar  A  of the largest motor as it is started
 * Returns  A; the phasor sum is never more
 * Cost     O(1)
 * Source   triangle inequality of phasors
 */
export const largestStart = (running: number, start: number): number => running + start;

interface LargestStartInputs {
  readonly running: number;
  readonly start: number;
}

export const largestStartSheet = defineSheet({
  id: 'power/largest-start',
  version: 1,
  inputs: {
    running: numberField('current', 'I_r', currents),
    start: numberField('current', 'I_s', currents),
  },
  outputs: { current: numberField('current', 'I') },
  formula: ['I = I_r + I_s \\ge \\left| \\underline{I}_r + \\underline{I}_s \\right|'],
  limits: [caution, always('SUM_CONSERVATIVE'), always('START_ASK_UTILITY')],
  sources: [circuitTheory],
  compute: (i: LargestStartInputs) => ({ current: largestStart(i.running, i.start) }),
});

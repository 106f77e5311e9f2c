import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents, powerFactors } from './bounds.ts';
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

/**
 * The same as phasors, each at its own power factor: a start is nearly all reactive, what runs is not, and a drop follows both.
 *
 * Method   P = I_r cos_r + I_s cos_s;  Q = I_r sin_r + I_s sin_s;  I = (P^2 + Q^2)^0.5;  cos = P/I
 * Symbols  cos_r, cos_s  power factors, lagging
 * Returns  A and power factor; 1 where nothing flows
 * Cost     O(1)
 * Source   three-phase circuit theory
 */
export const largestStartPhasors = (
  running: number,
  runningFactor: number,
  start: number,
  startFactor: number,
): { readonly current: number; readonly powerFactor: number } => {
  const active = running * runningFactor + start * startFactor;
  const reactive =
    running * Math.sqrt(1 - runningFactor * runningFactor) + start * Math.sqrt(1 - startFactor * startFactor);
  const current = Math.hypot(active, reactive);
  return { current, powerFactor: current === 0 ? 1 : Math.min(1, active / current) };
};

interface LargestStartInputs {
  readonly running: number;
  readonly start: number;
  readonly runningFactor: number;
  readonly startFactor: number;
}

export const largestStartSheet = defineSheet({
  id: 'power/largest-start',
  version: 2,
  inputs: {
    running: numberField('current', 'I_r', currents),
    start: numberField('current', 'I_s', currents),
    runningFactor: numberField('ratio', '\\cos\\varphi_r', { ...powerFactors, assumed: 0.85 }),
    startFactor: numberField('ratio', '\\cos\\varphi_s', { ...powerFactors, assumed: 0.3 }),
  },
  outputs: {
    current: numberField('current', 'I'),
    phasors: numberField('current', 'I_p'),
    powerFactor: numberField('ratio', '\\cos\\varphi'),
  },
  formula: [
    'I = I_r + I_s \\ge \\left| \\underline{I}_r + \\underline{I}_s \\right| = I_p',
    'I_p^2 = ( I_r \\cos\\varphi_r + I_s \\cos\\varphi_s )^2 + ( I_r \\sin\\varphi_r + I_s \\sin\\varphi_s )^2',
    '\\cos\\varphi = \\frac{I_r \\cos\\varphi_r + I_s \\cos\\varphi_s}{I_p}',
  ],
  limits: [caution, always('SUM_CONSERVATIVE'), always('START_ASK_UTILITY')],
  sources: [circuitTheory],
  compute: (i: LargestStartInputs) => {
    const { current, powerFactor } = largestStartPhasors(i.running, i.runningFactor, i.start, i.startFactor);
    return { current: largestStart(i.running, i.start), phasors: current, powerFactor };
  },
});

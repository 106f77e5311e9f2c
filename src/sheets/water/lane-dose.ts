import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { afterRun } from './after-run.ts';
import { times, volumes } from './bounds.ts';
import { derived } from './sources.ts';

/** Whether the meter's pulses run on between fills, or start anew with each. */
export type MeterPhase = 'free-running' | 'reset';

/**
 * Mean of the volume that a meter's start phase adds to a dose.
 *
 * Method   free-running: uniform over the one count below, mean -1/(2k); reset: none
 * Symbols  k  pulseDensity  scalar  1/m3  > 0
 * Returns  volume, m3, never positive
 * Cost     O(1)
 * Source   mean of a uniform distribution
 */
export const phaseBias = (pulseDensity: number, phase: MeterPhase): number =>
  phase === 'free-running' ? -0.5 / pulseDensity : 0;

/**
 * Standard deviation of a dose from the meter's start phase and the controller's scan.
 *
 * Method   sqrt( 1/(12 k^2) [free-running] + q^2 T_s^2/12 )
 * Symbols  k    pulseDensity  scalar  1/m3  > 0
 *          q    flow          scalar  m3/s  at closing
 *          T_s  scan          scalar  s     >= 0
 * Returns  volume, m3
 * Assumes  phase and scan independent and uniform
 * Cost     O(1)
 * Source   variance of a uniform distribution
 */
export const doseSpread = (pulseDensity: number, flow: number, scan: number, phase: MeterPhase): number =>
  Math.sqrt(((phase === 'free-running' ? pulseDensity ** -2 : 0) + (flow * scan) ** 2) / 12);

/**
 * Mean volume in the bottle of a lane that shuts at its count.
 *
 * Method   V = N/k + V_a + bias
 * Symbols  N    pulses        count   >= 0
 *          k    pulseDensity  scalar  1/m3  > 0
 *          V_a  after         scalar  m3    by `afterRun`
 *          bias               scalar  m3    by `phaseBias`
 * Returns  volume, m3, never negative
 * Cost     O(1)
 * Source   mass balance
 */
export const doseVolume = (pulses: number, pulseDensity: number, after: number, bias: number): number =>
  Math.max(0, pulses / pulseDensity + after + bias);

interface LaneDoseInputs {
  readonly pulses: number;
  readonly pulseDensity: number;
  readonly flow: number;
  readonly delay: number;
  readonly closing: number;
  readonly closingFactor: number;
  readonly drip: number;
  readonly scan: number;
  readonly phase: MeterPhase;
}

export const laneDoseSheet = defineSheet({
  id: 'water/lane-dose',
  version: 1,
  inputs: {
    pulses: numberField('count', 'N', { least: 0, most: 1e12 }),
    pulseDensity: numberField('pulseDensity', 'k', { least: 1, most: 1e12 }),
    flow: numberField('volumeFlow', 'q', { least: 0, most: 100 }),
    delay: numberField('time', 't_d', times),
    closing: numberField('time', 't_c', times),
    closingFactor: numberField('ratio', '\\kappa', { least: 0, most: 1, assumed: 0.5 }),
    drip: numberField('volume', 'V_{\\mathrm{drip}}', { ...volumes, assumed: 0 }),
    scan: numberField('time', 'T_s', { ...times, assumed: 0 }),
    phase: choiceField<MeterPhase>('\\text{phase}', ['free-running', 'reset'], 'free-running'),
  },
  outputs: {
    counted: numberField('volume', 'V_N'),
    afterRun: numberField('volume', 'V_a'),
    bias: numberField('volume', '\\delta'),
    volume: numberField('volume', 'V'),
    spread: numberField('volume', 's'),
  },
  formula: [
    'V = \\frac{N}{k} + V_a + \\delta',
    'V_a = q \\left( t_d + \\kappa t_c + \\tfrac{1}{2} T_s \\right) + V_{\\mathrm{drip}}',
    '\\delta = -\\frac{1}{2 k} \\ \\text{(free-running)}, \\quad \\delta = 0 \\ \\text{(reset)}',
    's = \\sqrt{ \\frac{1}{12 k^2} + \\frac{q^2 T_s^2}{12} }',
  ],
  limits: [{ code: 'DOSE_FEW_COUNTS', broken: ({ pulses }) => pulses < 1000 }],
  sources: [derived],
  compute: (i: LaneDoseInputs) => {
    const after = afterRun(i.flow, i.delay, i.closing, i.closingFactor, i.drip, i.scan);
    const bias = phaseBias(i.pulseDensity, i.phase);
    return {
      counted: i.pulses / i.pulseDensity,
      afterRun: after,
      bias,
      volume: doseVolume(i.pulses, i.pulseDensity, after, bias),
      spread: doseSpread(i.pulseDensity, i.flow, i.scan, i.phase),
    };
  },
});

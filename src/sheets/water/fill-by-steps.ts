import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { afterRun, linearClosing } from './after-run.ts';
import { times, volumes } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Volume that one lane passes between the events of a fill: other lanes that shut, a change-over, a nozzle covered.
 *
 * Method   V_N = sum(q_i dt_i)
 * Symbols  dt  durations  [n]  s     >= 0, from event to event
 *          q   flows      [n]  m3/s  >= 0, mean of the lane between these two events
 * Returns  volume, m3
 * Cost     O(n)
 * Source   mass balance
 */
export const countedVolume = (durations: readonly number[], flows: readonly number[]): number =>
  durations.reduce((sum, duration, i) => sum + duration * (flows[i] ?? 0), 0);

interface FillByStepsInputs {
  readonly durations: readonly number[];
  readonly flows: readonly number[];
  readonly flowAtCount: number;
  readonly delay: number;
  readonly closing: number;
  readonly drip: number;
}

export const fillByStepsSheet = defineSheet({
  id: 'water/fill-by-steps',
  version: 1,
  inputs: {
    durations: listField('time', '\\Delta t_i', times),
    flows: listField('volumeFlow', 'q_i', { least: 0, most: 100 }),
    flowAtCount: numberField('volumeFlow', 'q_N', { least: 0, most: 100 }),
    delay: numberField('time', 't_d', times),
    closing: numberField('time', 't_c', times),
    drip: numberField('volume', 'V_{\\mathrm{drip}}', { ...volumes, assumed: 0 }),
  },
  outputs: {
    counted: numberField('volume', 'V_N'),
    countTime: numberField('time', 't_N'),
    fillTime: numberField('time', 't'),
    afterRun: numberField('volume', 'V_a'),
    filled: numberField('volume', 'V'),
  },
  formula: [
    'V_N = \\sum_i q_i\\, \\Delta t_i, \\quad t_N = \\sum_i \\Delta t_i',
    't = t_N + t_d + t_c',
    'V_a = q_N \\left( t_d + \\tfrac{1}{2} t_c \\right), \\quad V = V_N + V_a + V_{\\mathrm{drip}}',
  ],
  limits: [{ code: 'FILL_AFTER_RUN_LARGE', broken: (_, { counted, afterRun }) => afterRun > 0.1 * counted }],
  sources: [derived],
  check: ({ durations, flows }) => listLengths({ durations, flows }),
  compute: (i: FillByStepsInputs) => {
    const counted = countedVolume(i.durations, i.flows);
    const countTime = i.durations.reduce((sum, duration) => sum + duration, 0);
    const after = afterRun(i.flowAtCount, i.delay, i.closing, linearClosing, 0, 0);
    return {
      counted,
      countTime,
      fillTime: countTime + i.delay + i.closing,
      afterRun: after,
      filled: counted + after + i.drip,
    };
  },
});

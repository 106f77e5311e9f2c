import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { afterRun } from './after-run.ts';
import { times, volumes } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Time from opening to the count, at one steady flow.
 *
 * Method   t = V/q
 * Symbols  V  volume  scalar  m3    >= 0
 *          q  flow    scalar  m3/s  > 0
 * Returns  time, s
 * Assumes  the flow stands at once; what setting the liquid moving costs is in `water/inertia-lag`
 * Cost     O(1)
 * Source   definition
 */
export const countTime = (volume: number, flow: number): number => volume / flow;

interface LaneFillInputs {
  readonly volume: number;
  readonly flow: number;
  readonly delay: number;
  readonly closing: number;
  readonly closingFactor: number;
  readonly drip: number;
}

export const laneFillSheet = defineSheet({
  id: 'water/lane-fill',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V_N', volumes),
    flow: numberField('volumeFlow', 'q', { above: 0, most: 100 }),
    delay: numberField('time', 't_d', times),
    closing: numberField('time', 't_c', times),
    closingFactor: numberField('ratio', '\\kappa', { least: 0, most: 1, assumed: 0.5 }),
    drip: numberField('volume', 'V_{\\mathrm{drip}}', { ...volumes, assumed: 0 }),
  },
  outputs: {
    countTime: numberField('time', 't_N'),
    fillTime: numberField('time', 't'),
    afterRun: numberField('volume', 'V_a'),
    filled: numberField('volume', 'V'),
  },
  formula: [
    't_N = \\frac{V_N}{q}, \\quad t = t_N + t_d + t_c',
    'V_a = q (t_d + \\kappa t_c) + V_{\\mathrm{drip}}, \\quad V = V_N + V_a',
  ],
  limits: [{ code: 'FILL_AFTER_RUN_LARGE', broken: ({ volume }, { afterRun }) => afterRun > 0.1 * volume }],
  sources: [derived],
  compute: (i: LaneFillInputs) => {
    const time = countTime(i.volume, i.flow);
    const after = afterRun(i.flow, i.delay, i.closing, i.closingFactor, i.drip, 0);
    return {
      countTime: time,
      fillTime: time + i.delay + i.closing,
      afterRun: after,
      filled: i.volume + after,
    };
  },
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { times, volumes } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Time of a fill at two speeds.
 *
 * Method   t = (V - V_s)/q_f + V_s/q_s + t_d
 * Symbols  V    volume      scalar  m3    the whole
 *          V_s  slowVolume  scalar  m3    its last part, at most V
 *          q_f  fastFlow    scalar  m3/s  > 0
 *          q_s  slowFlow    scalar  m3/s  > 0
 *          t_d  delay       scalar  s     opening and closing
 * Returns  time, s
 * Assumes  both flows steady; the change-over takes no time
 * Cost     O(1)
 * Source   definition
 */
export const fillTime = (
  volume: number,
  slowVolume: number,
  fastFlow: number,
  slowFlow: number,
  delay: number,
): number => (volume - slowVolume) / fastFlow + slowVolume / slowFlow + delay;

interface FillTimeInputs {
  readonly volume: number;
  readonly slowVolume: number;
  readonly fastFlow: number;
  readonly slowFlow: number;
  readonly delay: number;
}

export const fillTimeSheet = defineSheet({
  id: 'water/fill-time',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V', volumes),
    slowVolume: numberField('volume', 'V_s', { ...volumes, assumed: 0 }),
    fastFlow: numberField('volumeFlow', 'q_f', { above: 0, most: 100 }),
    slowFlow: numberField('volumeFlow', 'q_s', { above: 0, most: 100 }),
    delay: numberField('time', 't_d', { ...times, assumed: 0 }),
  },
  outputs: { fillTime: numberField('time', 't') },
  formula: ['t = \\frac{V - V_s}{q_f} + \\frac{V_s}{q_s} + t_d'],
  limits: [{ code: 'FILL_SLOW_NOT_SLOWER', broken: ({ slowFlow, fastFlow }) => slowFlow > fastFlow }],
  sources: [derived],
  check: ({ volume, slowVolume }) =>
    slowVolume > volume
      ? [{ code: 'FILL_SLOW_VOLUME', path: 'slowVolume', given: slowVolume, allowed: `<= ${volume}` }]
      : [],
  compute: (i: FillTimeInputs) => ({
    fillTime: fillTime(i.volume, i.slowVolume, i.fastFlow, i.slowFlow, i.delay),
  }),
});

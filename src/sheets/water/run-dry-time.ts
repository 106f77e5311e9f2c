import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows, volumes } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Time for which a stored volume lasts while more is drawn than comes in.
 *
 * Method   t = V/(Q - Q_m)
 * Symbols  V    volume  scalar  m3    usable, over the dead volume
 *          Q    draw    scalar  m3/s  mean
 *          Q_m  makeUp  scalar  m3/s  steady
 * Returns  time, s; infinity where the make-up keeps pace
 * Cost     O(1)
 * Source   mass balance
 */
export const runDryTime = (volume: number, draw: number, makeUp: number): number =>
  draw > makeUp ? volume / (draw - makeUp) : Number.POSITIVE_INFINITY;

export const runDryTimeSheet = defineSheet({
  id: 'water/run-dry-time',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V', volumes),
    draw: numberField('volumeFlow', 'Q', flows),
    makeUp: numberField('volumeFlow', 'Q_m', { ...flows, assumed: 0 }),
  },
  outputs: { time: numberField('time', 't') },
  formula: ['t = \\frac{V}{Q - Q_m}'],
  limits: [],
  sources: [derived],
  check: ({ draw, makeUp }) =>
    draw > makeUp ? [] : [{ code: 'RUN_DRY_NEVER', path: 'draw', given: draw, allowed: `> ${makeUp}` }],
  compute: (i: { readonly volume: number; readonly draw: number; readonly makeUp: number }) => ({
    time: runDryTime(i.volume, i.draw, i.makeUp),
  }),
});

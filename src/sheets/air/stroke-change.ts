import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { derived } from './sources.ts';

/**
 * Stroke time that is to be expected at another pressure, from the one that was measured where it was built.
 *
 * Method   t = t_b t_2/t_1
 * Symbols  t_b  asBuilt  scalar  s  measured
 *          t_1  there    scalar  s  computed at the pressure there, > 0
 *          t_2  here     scalar  s  computed at the pressure here
 * Returns  s
 * Assumes  what the computation leaves out (cushion, throttles, the time of the valve) slows in the same share
 * Cost     O(1)
 * Source   proportion; common practice
 */
export const strokeChange = (asBuilt: number, there: number, here: number): number =>
  (asBuilt * here) / there;

interface StrokeChangeInputs {
  readonly asBuilt: number;
  readonly there: number;
  readonly here: number;
}

const strokeTimes = { least: 1e-4, most: 1e4 } as const;

export const strokeChangeSheet = defineSheet({
  id: 'air/stroke-change',
  version: 1,
  inputs: {
    asBuilt: numberField('time', 't_b', strokeTimes),
    there: numberField('time', 't_1', strokeTimes),
    here: numberField('time', 't_2', strokeTimes),
  },
  outputs: { time: numberField('time', 't'), added: numberField('time', '\\Delta t') },
  formula: ['t = t_b \\frac{t_2}{t_1}, \\quad \\Delta t = t - t_b'],
  limits: [
    { code: 'STROKE_IN_PROPORTION', broken: () => true },
    {
      code: 'STROKE_FAR_FROM_BUILT',
      broken: ({ asBuilt, there }) => asBuilt > 2 * there || there > 2 * asBuilt,
    },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived],
  compute: (i: StrokeChangeInputs) => {
    const time = strokeChange(i.asBuilt, i.there, i.here);
    return { time, added: time - i.asBuilt };
  },
});

import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
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
  readonly asBuilt: readonly number[];
  readonly there: readonly number[];
  readonly here: readonly number[];
}

const strokeTimes = { least: 1e-4, most: 1e4 } as const;

export const strokeChangeSheet = defineSheet({
  id: 'air/stroke-change',
  version: 1,
  inputs: {
    asBuilt: listField('time', 't_{b,i}', strokeTimes),
    there: listField('time', 't_{1,i}', strokeTimes),
    here: listField('time', 't_{2,i}', strokeTimes),
  },
  outputs: { times: listField('time', 't_i'), added: numberField('time', '\\Delta t') },
  formula: ['t_i = t_{b,i} \\frac{t_{2,i}}{t_{1,i}}, \\quad \\Delta t = \\sum_i (t_i - t_{b,i})'],
  limits: [
    { code: 'STROKE_IN_PROPORTION', broken: () => true },
    {
      code: 'STROKE_FAR_FROM_BUILT',
      broken: ({ asBuilt, there }) =>
        asBuilt.some((built, i) => built > 2 * there[i]! || there[i]! > 2 * built),
    },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived],
  check: ({ asBuilt, there, here }) => listLengths({ asBuilt, there, here }),
  compute: ({ asBuilt, there, here }: StrokeChangeInputs) => {
    const times = asBuilt.map((built, i) => strokeChange(built, there[i]!, here[i]!));
    return { times, added: times.reduce((sum, time, i) => sum + time - asBuilt[i]!, 0) };
  },
});

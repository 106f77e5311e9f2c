import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { periods, ratesAboveZero, times } from './bounds.ts';
import { definition } from './sources.ts';

interface TimeLostInputs {
  readonly duration: number;
  readonly lost: number;
  readonly setRate: number;
}

interface TimeLost {
  readonly share: number;
  readonly left: number;
  readonly bottles: number;
}

/**
 * What time that was lost is of a shift, and what it is worth.
 *
 * Method   p = t_l/t,  A = 1 - p,  n = R t_l
 * Symbols  t    duration  scalar  s    > 0
 *          t_l  lost      scalar  s    0 to t
 *          R    setRate   scalar  1/s  > 0, what the line makes while nothing stops it
 * Returns  share of the shift; share that is left, the availability were nothing else lost; bottles not made
 * Assumes  the line would have run at its set rate in that time
 * Cost     O(1)
 * Source   definition
 */
export const timeLost = ({ duration, lost, setRate }: TimeLostInputs): TimeLost => ({
  share: lost / duration,
  left: (duration - lost) / duration,
  bottles: setRate * lost,
});

export const timeLostSheet = defineSheet<TimeLostInputs, TimeLost>({
  id: 'rate/time-lost',
  version: 1,
  inputs: {
    duration: numberField('time', 't', periods),
    lost: numberField('time', 't_l', times),
    setRate: numberField('rate', 'R', ratesAboveZero),
  },
  outputs: {
    share: numberField('ratio', 'p'),
    left: numberField('ratio', 'A'),
    bottles: numberField('count', 'n'),
  },
  formula: ['p = \\frac{t_l}{t}, \\quad A = 1 - p, \\quad n = R\\, t_l'],
  limits: [{ code: 'LOST_AT_SET_RATE', broken: () => true }],
  sources: [definition],
  check: ({ duration, lost }) =>
    lost > duration
      ? [{ code: 'LOST_OVER_SHIFT', path: 'lost', given: lost, allowed: `<= ${duration}` }]
      : [],
  compute: timeLost,
});

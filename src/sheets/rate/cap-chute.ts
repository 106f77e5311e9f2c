import type { Problem } from '../../quantity/problem.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { ratesAboveZero, times } from './bounds.ts';
import { definition } from './sources.ts';

interface ChuteInputs {
  readonly low: number;
  readonly high: number;
  readonly feed: number;
  readonly use: number;
  readonly runUp: number;
}

interface Chute {
  readonly refill: number;
  readonly drain: number;
  readonly duty: number;
  readonly starts: number;
  readonly reserve: number;
  readonly reserveNeeded: number;
}

/**
 * How a cap sorter works between the two sensors of its chute.
 *
 * Method   t_r = (V_h - V_l)/(q_s - q_c),  t_d = (V_h - V_l)/q_c,  duty = q_c/q_s,  starts = 1/(t_r + t_d)
 * Symbols  V_l  low    count          caps below the low sensor
 *          V_h  high   count          caps below the high sensor, > V_l
 *          q_s  feed   scalar  1/s    of the sorter, > q_c
 *          q_c  use    scalar  1/s    of the closing station, > 0
 *          t_u  runUp  scalar  s      from the low sensor's signal to the first cap in the chute
 * Returns  refill and drain, s; share of time that the sorter runs; starts a second; how long the caps below
 *          the low sensor last, s; caps that are wanted there
 * Assumes  steady feed and use; the sorter fills while the closing station draws
 * Cost     O(1)
 * Source   definition
 */
export const capChute = ({ low, high, feed, use, runUp }: ChuteInputs): Chute => {
  const between = high - low;
  const refill = between / (feed - use);
  const drain = between / use;
  return {
    refill,
    drain,
    duty: use / feed,
    starts: 1 / (refill + drain),
    reserve: low / use,
    reserveNeeded: use * runUp,
  };
};

const problemsOf = ({ low, high, feed, use }: ChuteInputs): readonly Problem[] => [
  ...(high > low ? [] : [{ code: 'CHUTE_SENSORS_SWAPPED', path: 'high', given: high, allowed: `> ${low}` }]),
  ...(feed > use ? [] : [{ code: 'CHUTE_FEED_SLOW', path: 'feed', given: feed, allowed: `> ${use}` }]),
];

const caps = { least: 0, most: 1e6 } as const;

export const capChuteSheet = defineSheet<ChuteInputs, Chute>({
  id: 'rate/cap-chute',
  version: 1,
  inputs: {
    low: numberField('count', 'V_l', caps),
    high: numberField('count', 'V_h', caps),
    feed: numberField('rate', 'q_s', ratesAboveZero),
    use: numberField('rate', 'q_c', ratesAboveZero),
    runUp: numberField('time', 't_u', { ...times, assumed: 0 }),
  },
  outputs: {
    refill: numberField('time', 't_r'),
    drain: numberField('time', 't_d'),
    duty: numberField('ratio', 'd'),
    starts: numberField('startRate', 'f'),
    reserve: numberField('time', 't_l'),
    reserveNeeded: numberField('count', 'V_{l,\\min}'),
  },
  formula: [
    't_r = \\frac{V_h - V_l}{q_s - q_c}, \\quad t_d = \\frac{V_h - V_l}{q_c}, \\quad d = \\frac{q_c}{q_s}, \\quad f = \\frac{1}{t_r + t_d}',
    't_l = \\frac{V_l}{q_c}, \\quad V_{l,\\min} = q_c t_u',
  ],
  limits: [
    { code: 'CHUTE_RESERVE_SHORT', broken: ({ low }, { reserveNeeded }) => low < reserveNeeded },
    { code: 'CHUTE_RUN_UP_UNKNOWN', broken: ({ runUp }) => runUp === 0 },
  ],
  sources: [definition],
  check: problemsOf,
  compute: capChute,
});

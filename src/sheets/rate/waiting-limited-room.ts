import type { Problem } from '../../quantity/problem.ts';
import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { ratesAboveZero } from './bounds.ts';
import { queueTheory } from './trial-sources.ts';
import { wholeProblems } from './whole.ts';

interface LimitedRoomInputs {
  readonly arrivals: number;
  readonly pace: number;
  readonly heads: number;
  readonly room: number;
}

interface LimitedRoom {
  readonly shares: readonly number[];
  readonly empty: number;
  readonly full: number;
  readonly passed: number;
  readonly present: number;
  readonly waiting: number;
  readonly through: number;
  readonly wait: number;
  readonly use: number;
}

/** Shares of time with 0, 1 … K bottles, each state fed by `up` from below and emptied by `down`. */
const sharesOf = (up: number, down: (bottles: number) => number, most: number): number[] => {
  // kept by logarithms: the ratio of neighbours may be of any size, and its powers leave the doubles
  const logs = [0];
  for (let n = 1; n <= most; n++) logs.push(logs[n - 1]! + Math.log(up) - Math.log(down(n)));
  const top = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - top));
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / sum);
};

const meanOf = (shares: readonly number[], value: (bottles: number) => number): number =>
  shares.reduce((sum, share, n) => sum + value(n) * share, 0);

/**
 * Bottles before a station of one or several heads whose room is limited: who comes when it is full goes elsewhere.
 *
 * Method   P_n = P_(n-1) lambda/(min(n, c) mu), sum P = 1;  passed = lambda (1 - P_K);  W = L/passed
 * Symbols  lambda  arrivals  scalar  1/s    > 0
 *          mu      pace      scalar  1/s    > 0, of one head
 *          c       heads     count          >= 1
 *          K       room      count          >= c, places with those at the heads
 * Returns  shares of time with 0 … K bottles; empty, full; rate that passes; bottles present and waiting;
 *          time through and wait, s, of those that pass; use of a head
 * Assumes  bottles come at random; the times of a head vary like the gaps between chance events
 * Cost     O(K)
 * Source   birth and death equations; Little
 */
export const waitingLimitedRoom = ({ arrivals, pace, heads, room }: LimitedRoomInputs): LimitedRoom => {
  const shares = sharesOf(arrivals, (n) => Math.min(n, heads) * pace, room);
  const full = shares[room]!;
  // what is taken up is what the heads do; lambda (1 - P_K) loses its digits when nearly all are turned away
  const busy = meanOf(shares, (n) => Math.min(n, heads));
  const passed = busy * pace;
  const present = meanOf(shares, (n) => n);
  const waiting = meanOf(shares, (n) => Math.max(0, n - heads));
  return {
    shares,
    empty: shares[0]!,
    full,
    passed,
    present,
    waiting,
    through: present / passed,
    wait: waiting / passed,
    use: busy / heads,
  };
};

const problemsOf = ({ heads, room }: LimitedRoomInputs): readonly Problem[] => [
  ...wholeProblems({ heads, room }),
  ...(room >= heads ? [] : [{ code: 'ROOM_UNDER_HEADS', path: 'room', given: room, allowed: `>= ${heads}` }]),
];

/** More states than anybody reads; a longer conveyor is a matter for the sheets of two stations. */
const mostPlaces = 200;

export const waitingLimitedRoomSheet = defineSheet<LimitedRoomInputs, LimitedRoom>({
  id: 'rate/waiting-limited-room',
  version: 1,
  inputs: {
    arrivals: numberField('rate', '\\lambda', ratesAboveZero),
    pace: numberField('rate', '\\mu', ratesAboveZero),
    heads: numberField('count', 'c', { least: 1, most: mostPlaces, assumed: 1 }),
    room: numberField('count', 'K', { least: 1, most: mostPlaces }),
  },
  outputs: {
    shares: listField('ratio', 'P_n'),
    empty: numberField('ratio', 'P_0'),
    full: numberField('ratio', 'P_K'),
    passed: numberField('rate', '\\lambda_e'),
    present: numberField('count', 'L'),
    waiting: numberField('count', 'L_q'),
    through: numberField('time', 'W'),
    wait: numberField('time', 'W_q'),
    use: numberField('ratio', 'u'),
  },
  formula: [
    'P_n = P_{n-1} \\frac{\\lambda}{\\min(n, c)\\, \\mu}, \\quad \\sum_{n=0}^{K} P_n = 1',
    'L = \\sum_n n P_n, \\quad L_q = \\sum_{n > c} (n - c) P_n, \\quad \\lambda_e = \\lambda (1 - P_K) = \\mu \\sum_n \\min(n, c) P_n',
    'W = \\frac{L}{\\lambda_e}, \\quad W_q = \\frac{L_q}{\\lambda_e}, \\quad u = \\frac{\\lambda_e}{c\\, \\mu}',
  ],
  limits: [{ code: 'WAIT_RANDOM_ARRIVALS', broken: () => true }],
  sources: [queueTheory],
  check: problemsOf,
  compute: waitingLimitedRoom,
});

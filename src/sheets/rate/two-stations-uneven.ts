import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { ratesAboveZero } from './bounds.ts';
import { queueTheory } from './trial-sources.ts';
import { waitingLimitedRoom } from './waiting-limited-room.ts';
import { wholeProblems } from './whole.ts';

interface UnevenInputs {
  readonly first: number;
  readonly second: number;
  readonly room: number;
}

interface Uneven {
  readonly throughput: number;
  readonly starved: number;
  readonly blocked: number;
}

/**
 * Two stations that never stop, whose times for a bottle vary very much, with room between them.
 *
 * Method   bottles that the first has done and the second has not: P_n = P_(n-1) mu_1/mu_2, n = 0 … B + 2;
 *          throughput = mu_2 (1 - P_0), starved P_0, blocked P_(B+2); two alike: mu (B + 2)/(B + 3)
 * Symbols  mu_1  first   scalar  1/s    > 0
 *          mu_2  second  scalar  1/s    > 0
 *          B     room    count          >= 0, whole
 * Returns  rate that comes through; shares of time in which the second starves and the first is blocked
 * Assumes  the first always has bottles, the last always goes; times vary like the gaps between chance events;
 *          a bottle without room stays in the first station
 * Cost     O(B)
 * Source   birth and death equations: one server with room for B + 2
 */
export const twoStationsUneven = ({ first, second, room }: UnevenInputs): Uneven => {
  const { empty, full, passed } = waitingLimitedRoom({
    arrivals: first,
    pace: second,
    heads: 1,
    room: room + 2,
  });
  return { throughput: passed, starved: empty, blocked: full };
};

/** Every place more is one state more. */
const mostPlaces = 198;

export const twoStationsUnevenSheet = defineSheet<UnevenInputs, Uneven>({
  id: 'rate/two-stations-uneven',
  version: 1,
  inputs: {
    first: numberField('rate', '\\mu_1', ratesAboveZero),
    second: numberField('rate', '\\mu_2', ratesAboveZero),
    room: numberField('count', 'B', { least: 0, most: mostPlaces }),
  },
  outputs: {
    throughput: numberField('rate', 'R'),
    starved: numberField('ratio', 'P_0'),
    blocked: numberField('ratio', 'P_{B+2}'),
  },
  formula: [
    'P_n = P_{n-1} \\frac{\\mu_1}{\\mu_2}, \\quad \\sum_{n=0}^{B+2} P_n = 1, \\quad R = \\mu_2 (1 - P_0)',
    'R = \\mu \\frac{B + 2}{B + 3} \\ \\text{where} \\ \\mu_1 = \\mu_2 = \\mu',
  ],
  limits: [{ code: 'ROOM_VERY_UNEVEN', broken: () => true }],
  sources: [queueTheory],
  check: ({ room }) => wholeProblems({ room }),
  compute: twoStationsUneven,
});

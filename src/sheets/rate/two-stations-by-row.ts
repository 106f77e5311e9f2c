import { numberField } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { places, stopChances } from './trial-bounds.ts';
import { wholeProblems } from './whole.ts';

interface ByRowInputs {
  readonly readyFirst: number;
  readonly readySecond: number;
  readonly room: number;
}

interface ByRow {
  readonly efficiency: number;
  readonly starved: number;
  readonly blocked: number;
}

/** Share of cycles in which the room is empty, seen by the second station. */
const emptyShare = (p1: number, p2: number, room: number): number => {
  // the printed form, (1 - p1)(1 - A)/(1 - (p1/p2) A^N), divided through by 1 - A: that one is 0/0 where p1 = p2
  const ratio = (p1 * (1 - p2)) / (p2 * (1 - p1));
  let sum = 0;
  let power = 1;
  for (let n = 0; n < room; n++) {
    sum += power;
    power *= ratio;
  }
  return 1 / (1 + (p1 * sum) / (p2 * (1 - p1)));
};

/**
 * Two stations with room between them, each of which is ready or not in every cycle, whatever it was before.
 *
 * Method   Q(p, q) = (1 - p)(1 - A)/(1 - (p/q) A^N),  A = p (1 - q)/(q (1 - p));  (1 - p)/(N + 1 - p) where p = q
 *          E = p2 (1 - Q(p1, p2));  starved p2 Q(p1, p2);  blocked p1 Q(p2, p1)
 * Symbols  p1  readyFirst   ratio   chance that it gives a bottle in a cycle
 *          p2  readySecond  ratio
 *          N   room         count   whole, >= 1
 * Returns  bottles a cycle that come through; shares of cycles in which the second would work and has none,
 *          and in which the first would and has no room
 * Assumes  a first station without room waits before it works; a place that the second frees in a cycle can be taken
 * Cost     O(N)
 * Source   J. Li, S. M. Meerkov: Bernoulli line
 */
export const twoStationsByRow = ({ readyFirst: p1, readySecond: p2, room }: ByRowInputs): ByRow => {
  const starved = p2 * emptyShare(p1, p2, room);
  return { efficiency: p2 - starved, starved, blocked: p1 * emptyShare(p2, p1, room) };
};

const bernoulliLine: Source = {
  title: 'J. Li, S. M. Meerkov, Production Systems Engineering: two Bernoulli machines',
  place: 'form recalled and held against its Markov chain',
  mark: 'computed',
};

export const twoStationsByRowSheet = defineSheet<ByRowInputs, ByRow>({
  id: 'rate/two-stations-by-row',
  version: 1,
  inputs: {
    readyFirst: numberField('ratio', 'p_1', stopChances),
    readySecond: numberField('ratio', 'p_2', stopChances),
    room: numberField('count', 'N', { ...places, least: 1 }),
  },
  outputs: {
    efficiency: numberField('ratio', 'E'),
    starved: numberField('ratio', 'p_s'),
    blocked: numberField('ratio', 'p_b'),
  },
  formula: [
    'Q(p, q) = \\frac{(1 - p)(1 - A)}{1 - \\frac{p}{q} A^N}, \\quad A = \\frac{p\\,(1 - q)}{q\\,(1 - p)}, \\quad Q(p, p) = \\frac{1 - p}{N + 1 - p}',
    'E = p_2 (1 - Q(p_1, p_2)), \\quad p_s = p_2\\, Q(p_1, p_2), \\quad p_b = p_1\\, Q(p_2, p_1)',
  ],
  limits: [{ code: 'ROOM_NO_MEMORY', broken: () => true }],
  sources: [bernoulliLine],
  check: ({ room }) => wholeProblems({ room }),
  compute: twoStationsByRow,
});

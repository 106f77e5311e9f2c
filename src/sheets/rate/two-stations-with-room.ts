import { numberField } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { clearChances, places, stopChances } from './trial-bounds.ts';
import { wholeProblems } from './whole.ts';

interface TwoStationsInputs {
  readonly stopFirst: number;
  readonly clearFirst: number;
  readonly stopSecond: number;
  readonly clearSecond: number;
  readonly room: number;
}

interface TwoStations {
  readonly efficiency: number;
  readonly starved: number;
  readonly blocked: number;
  readonly level: number;
  readonly withoutRoom: number;
  readonly endlessRoom: number;
}

/** A weight of a state, without its power of X: level, whether the second station is up, factor, power. */
type State = readonly [level: number, secondUp: boolean, factor: number, power: number];

/**
 * Two stations of one cycle with room for N bottles between them, each with stops of its own; exact.
 *
 * Method   a = r1 + r2 - r1 r2 - r1 p2,  b = r1 + r2 - r1 r2 - p1 r2,
 *          c = p1 + p2 - p1 p2 - p1 r2,  d = p1 + p2 - p1 p2 - r1 p2,
 *          Y1 = a/c, Y2 = b/d, X = Y2/Y1; weights of the states (n, up1, up2):
 *          X^n Y1^up1 Y2^up2 for 2 <= n <= N - 2, and at the ends
 *          (0,0,1) X a/(r1 p2); (1,0,0) X; (1,0,1) X Y2; (1,1,1) X a/(p2 d);
 *          (N-1,0,0) X^(N-1); (N-1,1,0) X^(N-1) Y1; (N-1,1,1) X^(N-1) b/(p1 c); (N,1,0) X^(N-1) b/(p1 r2)
 *          efficiency = share of the states with up2 and n >= 1
 * Symbols  p1, r1  stopFirst, clearFirst    chance that it stops in a cycle in which it works, and that a stop ends
 *          p2, r2  stopSecond, clearSecond  the same
 *          N       room                     count, whole, >= 4
 * Returns  efficiency; shares of time starved and blocked; mean level; efficiency with no room and with endless room
 * Assumes  one cycle time for both; an idle station does not stop; stations change first, then the room
 * Cost     O(N)
 * Source   J. A. Buzacott, S. B. Gershwin: deterministic two-machine line
 */
export const twoStationsWithRoom = (i: TwoStationsInputs): TwoStations => {
  const { stopFirst: p1, clearFirst: r1, stopSecond: p2, clearSecond: r2, room: N } = i;
  const a = r1 + r2 - r1 * r2 - r1 * p2;
  const b = r1 + r2 - r1 * r2 - p1 * r2;
  const c = p1 + p2 - p1 * p2 - p1 * r2;
  const d = p1 + p2 - p1 * p2 - r1 * p2;
  const y1 = a / c;
  const y2 = b / d;
  const x = y2 / y1;
  const states: State[] = [
    [0, true, a / (r1 * p2), 1],
    [1, false, 1, 1],
    [1, true, y2 + a / (p2 * d), 1],
    [N - 1, false, 1 + y1, N - 1],
    [N - 1, true, b / (p1 * c), N - 1],
    [N, false, b / (p1 * r2), N - 1],
  ];
  for (let n = 2; n <= N - 2; n++) {
    states.push([n, false, 1 + y1, n], [n, true, (1 + y1) * y2, n]);
  }
  // powers count from that end of the room where they are greatest, so that they only fade
  const from = x > 1 ? N - 1 : 1;
  const weight = ([, , factor, power]: State): number => factor * x ** (power - from);
  const total = (chosen: readonly State[], by: (state: State) => number = weight): number =>
    chosen.reduce((sum, state) => sum + by(state), 0);
  const sum = total(states);
  return {
    efficiency: total(states.filter(([level, secondUp]) => secondUp && level > 0)) / sum,
    starved: weight(states[0]!) / sum,
    blocked: weight(states[5]!) / sum,
    level: total(states, (state) => state[0] * weight(state)) / sum,
    withoutRoom: 1 / (1 + p1 / r1 + p2 / r2),
    endlessRoom: Math.min(r1 / (r1 + p1), r2 / (r2 + p2)),
  };
};

const deterministicLine: Source = {
  title:
    'S. B. Gershwin, Manufacturing Systems Engineering: deterministic two-machine line, after J. A. Buzacott',
  place: 'form recalled, then put right against the Markov chain of the line for ten sets of chances',
  mark: 'computed',
};

export const twoStationsWithRoomSheet = defineSheet<TwoStationsInputs, TwoStations>({
  id: 'rate/two-stations-with-room',
  version: 1,
  inputs: {
    stopFirst: numberField('ratio', 'p_1', stopChances),
    clearFirst: numberField('ratio', 'r_1', clearChances),
    stopSecond: numberField('ratio', 'p_2', stopChances),
    clearSecond: numberField('ratio', 'r_2', clearChances),
    room: numberField('count', 'N', { ...places, least: 4 }),
  },
  outputs: {
    efficiency: numberField('ratio', 'E'),
    starved: numberField('ratio', 'p_s'),
    blocked: numberField('ratio', 'p_b'),
    level: numberField('count', '\\bar n'),
    withoutRoom: numberField('ratio', 'E_0'),
    endlessRoom: numberField('ratio', 'E_\\infty'),
  },
  formula: [
    'a = r_1 + r_2 - r_1 r_2 - r_1 p_2, \\quad b = r_1 + r_2 - r_1 r_2 - p_1 r_2',
    'c = p_1 + p_2 - p_1 p_2 - p_1 r_2, \\quad d = p_1 + p_2 - p_1 p_2 - r_1 p_2',
    'Y_1 = \\frac{a}{c}, \\quad Y_2 = \\frac{b}{d}, \\quad X = \\frac{Y_2}{Y_1}, \\quad P(n, \\alpha_1, \\alpha_2) \\propto X^n Y_1^{\\alpha_1} Y_2^{\\alpha_2}, \\ 2 \\le n \\le N - 2',
    'E = \\sum_{\\alpha_2 = 1,\\, n \\ge 1} P, \\quad p_s = P(0, 0, 1), \\quad p_b = P(N, 1, 0)',
    'E_0 = \\frac{1}{1 + \\frac{p_1}{r_1} + \\frac{p_2}{r_2}}, \\quad E_\\infty = \\min_i \\frac{r_i}{r_i + p_i}',
  ],
  limits: [
    { code: 'ROOM_STOPS_ONLY_RUNNING', broken: () => true },
    // both may stop in one cycle, which the formula without room does not know
    {
      code: 'ROOM_NONE_NEARLY',
      broken: ({ stopFirst, stopSecond }) => stopFirst * stopSecond > 1e-3,
    },
  ],
  sources: [deterministicLine],
  check: ({ room }) => wholeProblems({ room }),
  compute: twoStationsWithRoom,
});

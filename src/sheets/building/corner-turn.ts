import { brentRoot } from '../brent-root.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { clearances, lengths } from './bounds.ts';
import { movingCaution } from './caution.ts';
import { plainGeometry } from './sources.ts';

/** Length that touches both outer walls and the inner corner at an angle. */
const lengthAt = (angle: number, width: number, first: number, second: number): number => {
  const s = Math.sin(angle);
  const c = Math.cos(angle);
  return (first * s + second * c - width) / (s * c);
};

/** Angle at which the turn is tightest: the zero of the slope of `lengthAt`, in (0, pi/2) where width < both. */
const tightest = (width: number, first: number, second: number): number =>
  brentRoot(
    (t) => {
      const s = Math.sin(t);
      const c = Math.cos(t);
      // (first c - second s) s c - (first s + second c - width)(c^2 - s^2)
      return first * s * s * s - second * c * c * c + width * (c * c - s * s);
    },
    0,
    0.5 * Math.PI,
    1e-15,
  );

/**
 * Longest rectangle that gets round a right-angled corner of two corridors without being lifted or tilted.
 *
 * Method   turning: L = min over t of (a sin t + b cos t - w)/(sin t cos t), both long ends on the outer walls
 *          and the inner corner on the long side; without turning, sideways into one corridor: L = max(a, b).
 *          The longer of both; nothing where w > min(a, b). At w = 0 the first is (a^(2/3) + b^(2/3))^(3/2)
 * Symbols  w  width   scalar  m
 *          a  first   scalar  m  width of one corridor
 *          b  second  scalar  m  width of the other
 * Returns  m; 0 where it is wider than a corridor
 * Assumes  square corner, corridors long enough, a rectangle seen from above
 * Cost     O(1), one root
 * Source   at every angle between the two corridors the rectangle must clear the inner corner, and it does so
 *          best in touch with both outer walls; where it lies wholly in a corridor it clears the corner anyway
 */
export const longestRound = (width: number, first: number, second: number): number => {
  const narrow = Math.min(first, second);
  if (width > narrow) return 0;
  const sideways = Math.max(first, second);
  if (width >= narrow * (1 - 1e-12)) return sideways;
  return Math.max(sideways, lengthAt(tightest(width, first, second), width, first, second));
};

export type TurnWay = 'turns' | 'sideways' | 'does not pass';

interface CornerTurnInputs {
  readonly length: number;
  readonly width: number;
  readonly first: number;
  readonly second: number;
  readonly clearance: number;
}

const turnWay = (length: number, width: number, first: number, second: number): TurnWay => {
  if (length > longestRound(width, first, second) + 1e-9) return 'does not pass';
  const narrow = Math.min(first, second);
  const turned =
    width < narrow * (1 - 1e-12) ? lengthAt(tightest(width, first, second), width, first, second) : 0;
  return length <= turned + 1e-9 ? 'turns' : 'sideways';
};

export const cornerTurnSheet = defineSheet({
  id: 'building/corner-turn',
  version: 1,
  inputs: {
    length: numberField('length', 'L', lengths),
    width: numberField('length', 'w', lengths),
    first: numberField('length', 'a', lengths),
    second: numberField('length', 'b', lengths),
    clearance: numberField('length', 'c', { ...clearances, assumed: 0.05 }),
  },
  outputs: {
    longest: numberField('length', 'L_{\\max}'),
    margin: numberField('length', 'm'),
    answer: choiceField<TurnWay>('\\text{answer}', ['turns', 'sideways', 'does not pass']),
  },
  formula: [
    "L_{\\max} = \\max \\left( a,\\ b,\\ \\min_{0 < t < \\pi/2} \\frac{a \\sin t + b \\cos t - w'}{\\sin t \\cos t} \\right) - 2 c, \\quad w' = w + 2 c \\le \\min(a, b)",
    'm = L_{\\max} - L, \\quad w = 0 = c: \\ L_{\\max} = \\left( a^{2/3} + b^{2/3} \\right)^{3/2}',
  ],
  limits: [
    movingCaution,
    { code: 'CORNER_BLOCKED', broken: (_, { answer }) => answer === 'does not pass' },
    { code: 'CORNER_SIDEWAYS', broken: (_, { answer }) => answer === 'sideways' },
    { code: 'CORNER_TOO_WIDE', broken: (_, { longest }) => longest === 0 },
    { code: 'CORNER_LEVEL', broken: () => true },
  ],
  sources: [plainGeometry],
  compute: (i: CornerTurnInputs) => {
    const width = i.width + 2 * i.clearance;
    const longest = Math.max(0, longestRound(width, i.first, i.second) - 2 * i.clearance);
    return {
      longest,
      margin: longest - i.length,
      answer: turnWay(i.length + 2 * i.clearance, width, i.first, i.second),
    };
  },
});

import type { Doubt } from './uncertain-places.ts';

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** How much of a finding's width one place of the book makes. */
export interface Cause {
  readonly path: string;
  readonly doubt: Doubt;
  /** Share of the width that would go if this value were sure, 0 to 1. */
  readonly share: number;
}

/** How far something moves either way, both counted positive. */
export interface Move {
  down: number;
  up: number;
}

export interface GapSum extends Move {
  readonly places: { path: string; doubt: Doubt; move: Move }[];
}

/** Causes that are named at the most, and the least share worth naming. */
const mostCauses = 8;
const leastShare = 0.01;

/** Width that goes when one square is taken out of a sum of squares, as a share of the width. */
export const causesOf = ({ down, up, places }: GapSum): readonly Cause[] => {
  const width = Math.sqrt(down) + Math.sqrt(up);
  if (!(width > 0)) return [];
  return places
    .map(({ path, doubt, move }) => {
      const left = Math.sqrt(Math.max(0, down - move.down ** 2)) + Math.sqrt(Math.max(0, up - move.up ** 2));
      return { path, doubt, share: 1 - left / width };
    })
    .filter((cause) => cause.share >= leastShare)
    .sort((a, b) => b.share - a.share)
    .slice(0, mostCauses);
};

export const nothing = (): Move => ({ down: 0, up: 0 });

/** Lets a move reach as far as a change; one that is mirrored stands for the same change the other way too. */
export const reach = (move: Move, change: number, mirrored = false): void => {
  const up = mirrored ? Math.abs(change) : change;
  const down = mirrored ? up : -change;
  if (up > move.up) move.up = up;
  if (down > move.down) move.down = down;
};

/** Adds a move to a sum of squares. */
export const addSquares = (sum: Move, move: Move): void => {
  sum.up += move.up ** 2;
  sum.down += move.down ** 2;
};

/** The ends about a centre of changes that were added as squares. */
export const intervalAbout = (centre: number, { down, up }: Move): Interval => ({
  low: centre - Math.sqrt(down),
  high: centre + Math.sqrt(up),
});

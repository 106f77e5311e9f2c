import type { Place } from './places-of-boxes.ts';

const between = (a: Place | undefined, b: Place | undefined): number =>
  a === undefined || b === undefined ? 0 : Math.hypot(a.x - b.x, a.y - b.y);

/** Length of a way through places, from where one stands. */
export const wayLength = (start: Place | undefined, way: readonly (Place | undefined)[]): number => {
  let [length, at] = [0, start];
  for (const place of way) {
    length += between(at, place);
    at = place ?? at;
  }
  return length;
};

const nearestFirst = <T>(start: Place | undefined, all: readonly T[], placeOf: (one: T) => Place): T[] => {
  const left = [...all];
  const way: T[] = [];
  let at = start;
  while (left.length > 0) {
    let [best, least] = [0, Number.POSITIVE_INFINITY];
    for (const [i, one] of left.entries()) {
      const away = between(at, placeOf(one));
      // the first of the list among equals, so that the same list gives the same way
      if (away < least - 1e-12) [best, least] = [i, away];
    }
    const [next] = left.splice(best, 1) as [T];
    way.push(next);
    at = placeOf(next);
  }
  return way;
};

/** Rounds over all pairs after which a way that can still be bettered is taken as it is. */
const mostRounds = 50;

/**
 * Places in an order that is short to walk: an open way from where one stands.
 *
 * Method   the nearest next, then stretches of it turned round while that makes it shorter (2-opt)
 * Symbols  start  where one stands; absent: at the first place
 * Returns  the same things; of equal ways always the same one; not the shortest way, but none with two legs that cross
 * Cost     O(n^2) a round, up to 50
 * Source   nearest neighbour and 2-opt, textbook methods
 */
export const walkOrder = <T>(
  start: Place | undefined,
  all: readonly T[],
  placeOf: (one: T) => Place,
): readonly T[] => {
  const way = nearestFirst(start, all, placeOf);
  const at = (i: number): Place | undefined =>
    i < 0 ? start : i < way.length ? placeOf(way[i]!) : undefined;
  for (let round = 0, better = true; better && round < mostRounds; round += 1) {
    better = false;
    for (let i = 0; i < way.length - 1; i += 1) {
      for (let j = i + 1; j < way.length; j += 1) {
        const now = between(at(i - 1), at(i)) + between(at(j), at(j + 1));
        const then = between(at(i - 1), at(j)) + between(at(i), at(j + 1));
        if (then < now - 1e-9) {
          way.splice(i, j - i + 1, ...way.slice(i, j + 1).reverse());
          better = true;
        }
      }
    }
  }
  return way;
};

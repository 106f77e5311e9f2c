import { type Opening, openingFlow } from './balance.ts';

/**
 * Pressure at the manifold of a tank that has run dry: it falls until the open lanes take just what comes in.
 *
 * Method   bisection on s = sqrt(p + o), o the greatest offset of an open lane: the flow rises with it
 * Symbols  flow  scalar  m3/s  > 0
 * Returns  Pa gauge
 */
export const shareOut = (openings: readonly Opening[], flow: number): number => {
  let low = 0;
  let high = 1;
  let highest = Number.NEGATIVE_INFINITY;
  for (const { conductance: c, offset: o } of openings) if (c > 0 && o > highest) highest = o;
  const taken = (s: number): number => {
    let sum = 0;
    for (const opening of openings) sum += openingFlow(opening, s * s - highest);
    return sum;
  };
  while (taken(high) < flow && high < 1e6) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = 0.5 * (low + high);
    if (taken(middle) < flow) low = middle;
    else high = middle;
  }
  return high * high - highest;
};

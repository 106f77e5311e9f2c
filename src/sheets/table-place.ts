export const lookUps = ['cautious', 'interpolated'] as const;
/** `cautious` takes the printed neighbour that asks more; `interpolated` a straight line between both. */
export type LookUp = (typeof lookUps)[number];

/** Where a value lies among rising printed ones: between place `low` and the next, at `share` of the way. */
export interface TablePlace {
  readonly low: number;
  readonly share: number;
}

// a conversion of units must not push a value off the printed one that it equals
const rounding = 1e-6;

/**
 * Place of a value in a row of printed values; outside them the end is taken, so the caller refuses or notes it.
 *
 * Method   a printed value itself, else between its neighbours; cautious: wholly to the side that asks more
 * Symbols  printed  [n]  rising, n >= 2
 *          towards  the side that asks more: `lower` for a temperature, `upper` for pH and chlorine
 * Returns  place, share 0 to 1
 * Cost     O(n)
 * Source   guide to the CT tables: temperature down, pH up, chlorine up
 */
export const tablePlace = (
  printed: readonly number[],
  value: number,
  lookUp: LookUp,
  towards: 'lower' | 'upper',
): TablePlace => {
  const last = printed.length - 1;
  const inside = Math.min(printed[last]!, Math.max(printed[0]!, value));
  const exact = printed.findIndex((each) => Math.abs(each - inside) <= rounding);
  if (exact >= 0) return exact === last ? { low: last - 1, share: 1 } : { low: exact, share: 0 };
  const low = printed.findIndex((each) => each > inside) - 1;
  if (lookUp === 'cautious') return { low, share: towards === 'lower' ? 0 : 1 };
  return { low, share: (inside - printed[low]!) / (printed[low + 1]! - printed[low]!) };
};

/** Straight between a place and the next one. */
export const between = ({ low, share }: TablePlace, at: (place: number) => number): number =>
  share === 0 ? at(low) : share === 1 ? at(low + 1) : (1 - share) * at(low) + share * at(low + 1);

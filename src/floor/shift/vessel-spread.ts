import type { Draw } from '../../line/shift/index.ts';

/** Steps of probability of the table. */
const steps = 32;

const quantilesOf = (values: readonly number[]): readonly number[] => {
  const sorted = [...values].sort((a, b) => a - b);
  const last = sorted.length - 1;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const at = (i * last) / steps;
    const below = Math.floor(at);
    return sorted[below]! + (at - below) * (sorted[Math.min(last, below + 1)]! - sorted[below]!);
  });
};

/**
 * How long a set fills from a vessel that the pump fills up again and again.
 *
 * Method   the fills of the hour as they follow from the vessel's state, each with the spread that a set has of itself
 * Symbols  fills   s, slowest lane of each row of the hour
 *          spread  s about a row that takes `base`
 * Returns  quantiles; the spread alone where no row was walked
 * Assumes  where in its cycle the pump is when a set opens is as good as chance
 * Cost     O(fills log fills)
 */
export const vesselSpread = (fills: readonly number[], spread: Draw, base: number): Draw => {
  if (fills.length === 0) return spread;
  const rows = quantilesOf(fills);
  const own =
    typeof spread === 'object' && spread.kind === 'quantiles' ? spread.quantiles.map((t) => t - base) : [0];
  return {
    kind: 'quantiles',
    quantiles: quantilesOf(rows.flatMap((row) => own.map((more) => Math.max(0, row + more)))),
  };
};

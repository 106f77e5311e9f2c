import type { RowFill } from '../../hydraulics/filled-row.ts';
import type { FillSystem } from '../../hydraulics/system.ts';
import type { Draw } from '../../line/shift/index.ts';

/** Steps of probability of the table. */
const steps = 32;
/** Halvings of the interval in which a quantile lies: far below a millisecond. */
const halvings = 40;

/**
 * How the slowest lane of a set varies from set to set.
 *
 * Method   a free-running meter opens anywhere between two pulses: its lane takes t -+ 1/(2 k q), evenly; the set is as
 *          slow as its slowest, so F(t) = prod F_i(t). Where trials told how much a lane scatters, by u(V), it is as wide
 *          as that: t -+ sqrt(3) u(V)/q
 * Symbols  k  pulses a m3;  q  flow of the lane at its count, m3/s;  t  of a start in the middle
 *          deviations  u(V) by lane, m3
 * Returns  quantiles less `base`; a plain time where no lane varies
 * Assumes  lanes start independently; what is not known of a lane is no spread from set to set and stays out of it
 * Cost     O(lanes) a step and halving
 */
export const fillSpread = (
  system: FillSystem,
  row: RowFill,
  base: number,
  deviations?: readonly number[],
): Draw => {
  const lanes = row.lanes.map(({ fillTime, flowAtEnd }, i) => {
    const { phase } = system.lanes[i]!;
    const volume = Math.max(phase, Math.sqrt(3) * (deviations?.[i] ?? 0));
    return { middle: fillTime, half: flowAtEnd > 0 ? volume / flowAtEnd : 0 };
  });
  const least = Math.max(...lanes.map(({ middle, half }) => middle - half));
  const most = Math.max(...lanes.map(({ middle, half }) => middle + half));
  if (!(most > least)) return row.fillTime - base;
  const share = (t: number): number =>
    lanes.reduce((product, { middle, half }) => {
      if (half === 0) return t >= middle ? product : 0;
      return product * Math.min(1, Math.max(0, (t - middle + half) / (2 * half)));
    }, 1);
  const quantiles = Array.from({ length: steps + 1 }, (_, i) => {
    let [low, high] = [least, most];
    if (i === 0) return least - base;
    for (let n = 0; n < halvings; n++) {
      const middle = 0.5 * (low + high);
      if (share(middle) < i / steps) low = middle;
      else high = middle;
    }
    return high - base;
  });
  return { kind: 'quantiles', quantiles };
};

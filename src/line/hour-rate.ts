import type { Walk } from './walked-rows.ts';

export interface HourRate {
  /** Bottles a second, mean over the walked time. */
  readonly mean: number;
  /** Bottles a second while the slowest row of it came out; 0 where the line stood still. */
  readonly worst: number;
}

/**
 * Rate over an agreed time, and of the worst row in it.
 *
 * Method   bottles that came out in the time after the first, the last row counted by its share
 * Symbols  lanes     scalar  bottles a fill
 *          duration  scalar  s
 * Returns  mean and worst rate, 1/s
 */
export const hourRate = (walk: Walk, lanes: number, duration: number): HourRate => {
  const outs = walk.fills.map((fill) => fill.out);
  const first = outs[0];
  if (first === undefined || !(duration > 0)) return { mean: 0, worst: 0 };
  let rows = 0;
  let longest = 0;
  for (let i = 1; i < outs.length; i++) {
    const before = outs[i - 1]! - first;
    const gap = outs[i]! - outs[i - 1]!;
    if (before >= duration) break;
    if (gap > longest) longest = gap;
    rows += gap > 0 ? Math.min(1, (duration - before) / gap) : 1;
  }
  const worst = walk.stuck !== undefined || longest <= 0 ? 0 : lanes / longest;
  return { mean: (rows * lanes) / duration, worst };
};

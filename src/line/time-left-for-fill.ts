import { fillTimeLeft } from '../sheets/rate/fill-time-left.ts';
import type { LineTimes } from './line-times.ts';
import { solveLine } from './solve-line.ts';

/** Loop time long enough to make any loop with the fill in it the longest. */
const veryLong = 1e5;

export interface TimeLeft {
  /** Longest fill of the slowest lane, its lag counted in, with which the agreed rate is met, s; may be negative. */
  readonly left: number;
  /** Other steps of the loop that holds the fill, s. */
  readonly others: readonly number[];
  /** Blocks that the loop spans, fills in a block, and fills in the loop. */
  readonly blocks: number;
  readonly fills: number;
  readonly fillsInLoop: number;
}

/**
 * Time that an agreed rate leaves for the fill.
 *
 * Method   lambda(F) is convex and piecewise straight in the fill time F; from an F at which a loop with the fill in it is
 *          the longest, each step goes to where that loop meets the agreed period
 * Returns  undefined where no loop holds the fill
 */
export const timeLeftForFill = (times: LineTimes, agreedRate: number): TimeLeft | undefined => {
  const { fill } = times;
  if (fill === undefined || !(agreedRate > 0)) return undefined;
  let filling = veryLong;
  let found: TimeLeft | undefined;
  for (let round = 0; round < 50; round++) {
    const line = solveLine({ ...times, fill: { ...fill, lag: 0, filling } });
    if (line === undefined || 'deadlock' in line) return found;
    const { loop } = line.cycle;
    const steps = loop.flatMap((arc) => arc.steps);
    const fillsInLoop = steps.filter((step) => step.step === 'fill').length;
    if (fillsInLoop === 0) return found;
    const blocks = loop.reduce((sum, arc) => sum + arc.lag, 0);
    const others = steps
      .filter((step) => step.step !== 'fill' && step.step !== 'lag')
      .map((step) => step.seconds);
    const { fills } = line.graph;
    const next = fillTimeLeft(agreedRate, fill.lanes, others, blocks, fills, fillsInLoop);
    found = { left: next, others, blocks, fills, fillsInLoop };
    if (next >= filling - 1e-9 || next <= 0) return found;
    filling = next;
  }
  return found;
};

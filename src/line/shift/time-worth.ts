import { headsTime } from '../../sheets/rate/station-rate.ts';
import type { LineTimes } from '../line-times.ts';
import { type LineSolution, solveLine } from '../solve-line.ts';

/** A time of the line that a person might change. */
export type WorthOf = 'fill' | 'dwell' | 'stroke' | 'cap' | 'clearOut';

/** What less of a time is worth by the exact period. */
export interface TimeWorth {
  readonly of: WorthOf;
  /** s now */
  readonly now: number;
  /** Bottles a second now. */
  readonly rate: number;
  /** Bottles a second gained by each second less, at the start. */
  readonly worth: number;
  /** s under which another loop is the longest, so that less of this time is worth less; absent where none is. */
  readonly until?: number;
  /** Bottles a second there, or with none of it left. */
  readonly rateThere: number;
}

const readTime = (times: LineTimes, of: WorthOf): number | undefined =>
  ({
    fill: times.fill?.filling,
    dwell: times.washer?.dwell,
    stroke: times.washer?.stroke,
    cap: times.closing?.perBottle,
    clearOut: times.fill?.clearOut,
  })[of];

const withTime = (times: LineTimes, of: WorthOf, seconds: number): LineTimes => {
  const { washer, fill, closing } = times;
  if (of === 'fill' && fill !== undefined) return { ...times, fill: { ...fill, filling: seconds } };
  if (of === 'clearOut' && fill !== undefined) return { ...times, fill: { ...fill, clearOut: seconds } };
  if (of === 'cap' && closing !== undefined) return { ...times, closing: { ...closing, perBottle: seconds } };
  if (washer === undefined) return times;
  return { ...times, washer: { ...washer, [of]: seconds } };
};

/** s of a block a second of the time: how often it stands in the longest loop, by the blocks that the loop spans. */
const slopeOf = ({ cycle, times, graph }: LineSolution, of: WorthOf): number => {
  const steps = cycle.loop.flatMap((arc) => arc.steps).filter(({ step }) => step === of).length;
  const blocks = cycle.loop.reduce((sum, { lag }) => sum + lag, 0);
  const { closing, fill } = times;
  const lanes = fill?.lanes ?? graph.bottles / graph.fills;
  const each = of === 'cap' && closing !== undefined ? headsTime(lanes, closing.heads, 1) : 1;
  return (steps * each) / blocks;
};

/** Breaks of a line of any size that are passed on the way to the nearest. */
const mostBreaks = 60;

/**
 * What a second less of a time is worth, and down to which length it is.
 *
 * Method   period of a block P(y) is convex and piecewise straight in a time y, with slope (times that y stands in the
 *          longest loop)/(blocks of the loop); rate = bottles/P, so worth = bottles slope/P^2; the nearest break below: from
 *          y = 0 on, where the straight piece found there meets the one of now, until P is on that one
 * Returns  undefined where the line has no such time or no period; worth 0 where the time is in no longest loop
 * Cost     a longest mean cycle a break
 */
export const timeWorth = (times: LineTimes, of: WorthOf): TimeWorth | undefined => {
  const now = readTime(times, of);
  const solved = solveLine(times);
  if (now === undefined || solved === undefined || 'deadlock' in solved) return undefined;
  const { bottles } = solved.graph;
  const { period } = solved.cycle;
  const slope = slopeOf(solved, of);
  const worth = (bottles * slope) / (period * period);
  const pieceAt = (y: number): number => period + slope * (y - now);
  const answer = { of, now, rate: bottles / period, worth };
  if (slope === 0) return { ...answer, rateThere: answer.rate };
  let y = 0;
  for (let i = 0; i < mostBreaks; i++) {
    const there = solveLine(withTime(times, of, y));
    if (there === undefined || 'deadlock' in there) return { ...answer, rateThere: answer.rate };
    const rateThere = bottles / there.cycle.period;
    if (there.cycle.period <= pieceAt(y) * (1 + 1e-12)) {
      return y > 0 ? { ...answer, until: y, rateThere } : { ...answer, rateThere };
    }
    // where the two straight pieces meet
    const other = slopeOf(there, of);
    if (!(slope > other)) return { ...answer, until: now, rateThere: answer.rate };
    y = (there.cycle.period - other * y - period + slope * now) / (slope - other);
    if (!(y < now)) return { ...answer, until: now, rateThere: answer.rate };
  }
  return { ...answer, rateThere: answer.rate };
};

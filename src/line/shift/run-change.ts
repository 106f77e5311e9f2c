import { pooled, RunningMeans } from './running-means.ts';
import type { ShiftLine } from './shift-line.ts';
import { ShiftMachine } from './shift-machine.ts';
import type { Figure, ShiftChange } from './shift-result.ts';
import type { ChangeTally, ShiftPlan } from './shift-tally.ts';

/**
 * Shifts of two lines, pair by pair with the same chances.
 *
 * Method   common random numbers: each cause and each spread has its stream in both, so what differs is the change
 */
export const runChange = (
  before: ShiftLine,
  after: ShiftLine,
  { seed, first, shifts }: ShiftPlan,
): ChangeTally => {
  const one = new ShiftMachine(before);
  const other = new ShiftMachine(after);
  const means = new RunningMeans(3);
  const figures = new Float64Array(3);
  for (let shift = first; shift < first + shifts; shift++) {
    one.run(seed, shift);
    other.run(seed, shift);
    figures[0] = one.counts.good;
    figures[1] = other.counts.good;
    figures[2] = figures[1]! - figures[0]!;
    means.add(figures);
  }
  return { shifts, means: [...means.means], squares: [...means.squares] };
};

export const mergeChanges = (tallies: readonly ChangeTally[]): ChangeTally =>
  tallies.reduce((a, b) => (a.shifts === 0 ? b : b.shifts === 0 ? a : pooled(a, b)));

export const shiftChange = ({ shifts, means, squares }: ChangeTally): ShiftChange => {
  const figure = (i: number): Figure => ({
    mean: means[i]!,
    spread: shifts > 1 ? Math.sqrt(Math.max(0, squares[i]!) / (shifts - 1)) : 0,
  });
  return { shifts, before: figure(0), after: figure(1), good: figure(2) };
};

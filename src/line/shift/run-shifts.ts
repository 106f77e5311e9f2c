import { contactWidth } from './contact-sums.ts';
import { pooled, RunningMeans } from './running-means.ts';
import type { ShiftLine } from './shift-line.ts';
import { ShiftMachine } from './shift-machine.ts';
import type { ShiftPlan, ShiftTally } from './shift-tally.ts';
import { readShift, vectorPlan } from './shift-vector.ts';

/**
 * Runs shifts of a line that `checkShift` finds nothing wrong with.
 *
 * Returns  sums alone: they take as much room after ten thousand shifts as after ten
 * Cost     `ShiftMachine`
 */
export const runShifts = (line: ShiftLine, { seed, first, shifts }: ShiftPlan): ShiftTally => {
  const machine = new ShiftMachine(line);
  const plan = vectorPlan(machine.layout);
  const means = new RunningMeans(plan.width);
  const figures = new Float64Array(plan.width);
  const goods: number[] = [];
  for (let shift = first; shift < first + shifts; shift++) {
    machine.run(seed, shift);
    readShift(machine, plan, figures);
    means.add(figures);
    const { good } = machine.counts;
    while (goods.length <= good) goods.push(0);
    goods[good]! += 1;
  }
  return {
    shifts,
    means: [...means.means],
    squares: [...means.squares],
    goods,
    contacts: machine.contacts === undefined ? [] : [...machine.contacts.sums],
  };
};

const mergeTwo = (a: ShiftTally, b: ShiftTally): ShiftTally => {
  if (a.shifts === 0) return b;
  if (b.shifts === 0) return a;
  return {
    ...pooled(a, b),
    goods: Array.from(
      { length: Math.max(a.goods.length, b.goods.length) },
      (_, i) => (a.goods[i] ?? 0) + (b.goods[i] ?? 0),
    ),
    contacts: a.contacts.map((value, i) => {
      const other = b.contacts[i]!;
      const which = i % contactWidth;
      return which === 1 ? Math.min(value, other) : which === 3 ? Math.max(value, other) : value + other;
    }),
  };
};

/** Runs of one line taken together, in the order of their shifts. */
export const mergeTallies = (tallies: readonly ShiftTally[]): ShiftTally => tallies.reduce(mergeTwo);

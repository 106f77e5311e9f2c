import { lostTime } from '../sheets/water/inertia-lag.ts';
import { type Column, type ColumnRow, together } from './column.ts';

/**
 * A row of which each change finds its steady flow at once: what `fillRow` gives, with the loss of a column.
 *
 * Symbols  order  the lanes as they reach their counts
 * Cost     a few operations for each change of each lane
 */
export const rowAtOnce = ({ push, resistance, mass, lanes }: Column, order: readonly number[]): ColumnRow => {
  const passed = lanes.map(() => 0);
  const volumes = lanes.map(() => 0);
  const times = lanes.map(() => 0);
  const rootOf = (through: readonly number[]): number => {
    const all = through.reduce((sum, c) => sum + c, 0);
    return Math.sqrt(push / (1 + resistance * all * all));
  };
  const through = lanes.map(({ open }) => open);
  const all = through.reduce((sum, c) => sum + c, 0);
  let time = lostTime(Number.POSITIVE_INFINITY, (mass * all * rootOf(through)) / push);
  const pass = (root: number, by: number): void => {
    time += by;
    lanes.forEach((_, i) => {
      passed[i] = passed[i]! + through[i]! * root * by;
    });
  };
  /** As it stood when the lane before reached its count. */
  let closedAt = rootOf(through);
  for (const next of order) {
    const { count, delay, closing } = lanes[next]!;
    for (;;) {
      // lanes that are there together, but for a rounding, leave together
      const root = count - passed[next]! <= together * count ? closedAt : rootOf(through);
      const until = (i: number, to: number): number => (to - passed[i]!) / (through[i]! * root);
      let by = until(next, count);
      let slowed = -1;
      lanes.forEach(({ changeOver, count: own, slow }, i) => {
        if (through[i] === 0 || through[i] === slow || changeOver >= own) return;
        const at = until(i, changeOver);
        if (at < by) [by, slowed] = [at, i];
      });
      pass(root, by);
      if (slowed >= 0) {
        through[slowed] = lanes[slowed]!.slow;
        continue;
      }
      volumes[next] = count + through[next]! * root * (delay + 0.5 * closing);
      times[next] = time + delay + closing;
      through[next] = 0;
      closedAt = root;
      break;
    }
  }
  return { volumes, times };
};

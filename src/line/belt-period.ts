import type { LineGraph } from './line-graph.ts';
import type { LineTimes } from './line-times.ts';
import { ShiftMachine } from './shift/shift-machine.ts';
import { shiftOfTimes } from './shift/shift-of-times.ts';

/** Blocks that are run, and most of them after which the line may repeat itself: rows on a belt keep their gaps. */
const blocks = 400;
const mostRepeated = 60;

/**
 * Period of a line some of whose conveyors stand with what stands at their ends.
 *
 * Method   what a row has still to go depends on the gap before it, which is a difference of moments: no graph of events
 *          that wait for each other says so. The line is run with its constant times from empty until its sets repeat
 * Symbols  period  scalar  s a block, of the same line with conveyors that accumulate; no line is faster
 * Returns  s a block; where nothing repeats, the mean of the second half of the run
 * Cost     O(blocks)
 */
export const beltPeriod = (times: LineTimes, graph: LineGraph, period: number): number => {
  const machine = new ShiftMachine(shiftOfTimes(times, blocks * period));
  machine.run(1, 0);
  const { sets } = machine.events;
  const { layout } = machine;
  const outs = layout.takeOff >= 0 ? sets.taken : layout.closing >= 0 ? sets.left : sets.cleared;
  const last = machine.setCount - 1;
  const between = (step: number, end: number): number => outs[end]! - outs[end - step]!;
  const tail = Math.min(mostRepeated * graph.fills, Math.floor(last / 2));
  // two stretches may take equally long by chance: every gap of the tail must be the one of a stretch before
  const repeats = (step: number): boolean => {
    for (let end = last; end > last - tail; end--) {
      if (Math.abs(between(1, end) - between(1, end - step)) > 1e-9 * period) return false;
    }
    return true;
  };
  for (let repeated = 1; repeated <= mostRepeated && repeated * graph.fills <= tail; repeated++) {
    const step = repeated * graph.fills;
    if (repeats(step)) return Math.max(period, between(step, last) / repeated);
  }
  const half = Math.floor(last / 2);
  return half > 0 ? Math.max(period, (between(half, last) / half) * graph.fills) : period;
};

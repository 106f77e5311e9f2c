import type { LineTimes } from './line-times.ts';
import { ShiftMachine } from './shift/shift-machine.ts';
import { shiftOfTimes } from './shift/shift-of-times.ts';
import { mostFills, type Walk, WalkedRows, type WalkedSupply } from './walked-rows.ts';

/**
 * The line row by row for a while, some of whose conveyors stand with what stands at their ends, with a supply that may
 * fall.
 *
 * Method   the line of a shift with its constant times, from empty, whose fills draw on the supply
 * Symbols  duration  scalar  s, counted from the first bottles out
 *          lead      scalar  s, by which these are out
 * Returns  as `walkLine`
 * Cost     O(rows)
 * Source   `StandingBelts`
 */
export const walkBelts = (
  times: LineTimes,
  supply: WalkedSupply,
  { duration, lead }: { readonly duration: number; readonly lead: number },
): Walk => {
  const { fill } = times;
  if (fill === undefined) return { fills: [] };
  const rows = new WalkedRows(supply);
  // what a fill takes is the supply's to say
  const line = shiftOfTimes({ ...times, fill: { ...fill, filling: 0 } }, lead + duration);
  const machine = new ShiftMachine(line, { supply: rows });
  machine.run(1, 0);
  const { layout, events } = machine;
  const { sets } = events;
  const outs = layout.takeOff >= 0 ? sets.taken : layout.closing >= 0 ? sets.left : sets.cleared;
  const end = outs[0]! + duration;
  const fills: Walk['fills'][number][] = [];
  for (const [set, row] of rows.rows.entries()) {
    const out = outs[set]!;
    fills.push({ out, ...row });
    if (out > end || fills.length === mostFills) return { fills };
  }
  return { fills, ...(rows.stuck === undefined ? {} : { stuck: rows.stuck }) };
};

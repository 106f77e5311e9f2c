import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLine } from '../any-line.arbitrary.ts';
import { orderOfEvents } from '../event-graph.ts';
import { lineGraph } from '../line-graph.ts';
import type { LineTimes } from '../line-times.ts';
import { longestMeanCycle } from '../longest-mean-cycle.ts';
import { shiftOfTimes } from '../testing/shift-of-times.ts';
import { simulatedLine } from '../testing/simulated-line.ts';
import { ShiftMachine } from './shift-machine.ts';

/** When each set left the line. */
const outsOf = (times: LineTimes, duration: number): number[] => {
  const machine = new ShiftMachine(shiftOfTimes(times, duration));
  machine.run(1, 0);
  const { sets } = machine.events;
  const outs =
    machine.layout.takeOff >= 0 ? sets.taken : machine.layout.closing >= 0 ? sets.left : sets.cleared;
  return [...outs.slice(0, machine.setCount)];
};

describe('a line of constant times, run as a shift', () => {
  it('lets each set out when machines with states and a clock do, to 1e-9', () => {
    fc.assert(
      fc.property(anyLine(), (times) => {
        if (orderOfEvents(lineGraph(times)!) === undefined) return;
        const expected = simulatedLine(times, 60);
        const outs = outsOf(times, expected[59]! + 1);
        expect(outs.length).toBeGreaterThanOrEqual(60);
        for (let i = 0; i < 60; i++) expect(Math.abs(outs[i]! - expected[i]!)).toBeLessThan(1e-9);
      }),
      { numRuns: 100 },
    );
  });

  it('has the period of the longest mean cycle, to 1e-9', () => {
    let regular = 0;
    fc.assert(
      fc.property(anyLine({ bounded: true }), (times) => {
        const graph = lineGraph(times)!;
        const cycle = longestMeanCycle(graph);
        if (orderOfEvents(graph) === undefined || cycle === undefined) return;
        const outs = outsOf(times, 300 * cycle.period);
        const last = outs.length - 1;
        // the blocks repeat after as many of them as a loop looks back, once shorter loops have died out
        const repeats = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 24].find((blocks) => {
          const step = blocks * graph.fills;
          const gained = outs[last]! - outs[last - step]!;
          return Math.abs(outs[last - step]! - outs[last - 2 * step]! - gained) < 1e-9;
        });
        if (repeats === undefined) return;
        regular += 1;
        const gained = outs[last]! - outs[last - repeats * graph.fills]!;
        expect(Math.abs(gained / repeats - cycle.period)).toBeLessThan(1e-9);
      }),
      { numRuns: 100 },
    );
    // lines that have not settled say nothing: they must be few
    expect(regular).toBeGreaterThan(60);
  });
});

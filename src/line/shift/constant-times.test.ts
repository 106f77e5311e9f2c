import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLine } from '../any-line.arbitrary.ts';
import { orderOfEvents } from '../event-graph.ts';
import { lineGraph } from '../line-graph.ts';
import type { LineTimes } from '../line-times.ts';
import { longestMeanCycle } from '../longest-mean-cycle.ts';
import { simulatedLine } from '../testing/simulated-line.ts';
import { standing } from './shift-events.ts';
import { ShiftMachine } from './shift-machine.ts';
import { shiftOfTimes } from './shift-of-times.ts';

const machineAfter = (times: LineTimes, duration: number): ShiftMachine => {
  const machine = new ShiftMachine(shiftOfTimes(times, duration));
  machine.run(1, 0);
  return machine;
};

/** When each set left the line. */
const outsOf = (machine: ShiftMachine): number[] => {
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
        const outs = outsOf(machineAfter(times, expected[59]! + 1));
        expect(outs.length).toBeGreaterThanOrEqual(60);
        for (let i = 0; i < 60; i++) expect(Math.abs(outs[i]! - expected[i]!)).toBeLessThan(1e-9);
      }),
      { numRuns: 100 },
    );
  });

  it('does so where conveyors stand with what stands at their ends, as belts do whose rows are moved by a clock', () => {
    let stood = 0;
    fc.assert(
      fc.property(anyLine({ belts: true }), (line) => {
        // a hold leaves no second row on the way that could stand
        const times = { ...line, holds: [] };
        if (orderOfEvents(lineGraph(times)!) === undefined) return;
        const strokes: number[] = [];
        const expected = simulatedLine(times, 40, undefined, (at) => strokes.push(at));
        const machine = machineAfter(times, expected[39]! + 1);
        const outs = outsOf(machine);
        for (let i = 0; i < 40; i++) expect(Math.abs(outs[i]! - expected[i]!)).toBeLessThan(1e-8);
        const { stroke, whyStroke } = machine.events.rows;
        for (const [i, at] of strokes.entries()) expect(Math.abs(stroke[i]! - at)).toBeLessThan(1e-8);
        if (strokes.some((_, i) => whyStroke[i] === standing)) stood += 1;
      }),
      { numRuns: 100 },
    );
    // where no washer waits for them, nothing was told apart
    expect(stood).toBeGreaterThan(15);
  });

  it('has the period of the longest mean cycle, to 1e-9', () => {
    let regular = 0;
    fc.assert(
      fc.property(anyLine({ bounded: true }), (times) => {
        const graph = lineGraph(times)!;
        const cycle = longestMeanCycle(graph);
        if (orderOfEvents(graph) === undefined || cycle === undefined) return;
        const outs = outsOf(machineAfter(times, 300 * cycle.period));
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

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLine } from '../any-line.arbitrary.ts';
import { orderOfEvents } from '../event-graph.ts';
import type { HoldRule } from '../hold-rule.ts';
import { lineGraph } from '../line-graph.ts';
import { simulatedLine } from '../testing/simulated-line.ts';
import { runShifts } from './run-shifts.ts';
import { shiftFigures } from './shift-figures.ts';
import type { ShiftLine } from './shift-line.ts';
import { ShiftMachine } from './shift-machine.ts';
import { shiftOfTimes } from './shift-of-times.ts';

const keeping = fc.constantFrom<Omit<HoldRule, 'rule'>>(
  { by: 'closing', until: 'room' },
  { by: 'takeOff', until: 'room' },
  { until: 'way out' },
  { by: 'closing', until: 'way out' },
  { holds: 'fill', by: 'closing', until: 'room' },
  { holds: 'fill', by: 'takeOff', until: 'room' },
  { holds: 'fill', by: 'closing', until: 'way out' },
  { holds: 'closing', by: 'takeOff', until: 'room' },
);

describe('a station that waits while one behind it is full or blocked', () => {
  it('begins when machines with states and a clock do, to 1e-8', () => {
    let kept = 0;
    fc.assert(
      fc.property(
        anyLine({ belts: true, bounded: true }),
        fc.array(keeping, { minLength: 1, maxLength: 2 }),
        (line, rules) => {
          const { closing, takeOff } = line;
          if (closing === undefined || takeOff === undefined) return;
          const times = {
            ...line,
            way: line.way.map((piece) => ({ ...piece, accumulates: true })),
            holds: rules.map((rule, i) => ({ rule: `H${i}`, ...rule })),
          };
          if (orderOfEvents(lineGraph(times)!) === undefined) return;
          const strokes: number[] = [];
          const expected = simulatedLine(times, 40, undefined, (at) => strokes.push(at));
          const machine = new ShiftMachine(shiftOfTimes(times, expected[39]! + 1));
          machine.run(1, 0);
          const { rows, sets } = machine.events;
          for (let i = 0; i < 40; i++) expect(Math.abs(sets.taken[i]! - expected[i]!)).toBeLessThan(1e-8);
          for (const [i, at] of strokes.entries()) expect(Math.abs(rows.stroke[i]! - at)).toBeLessThan(1e-8);
          if ([rows.strokeRule, sets.startRule, sets.capRule].some((of) => of.some((rule) => rule >= 0)))
            kept += 1;
        },
      ),
      { numRuns: 60 },
    );
    expect(kept).toBeGreaterThan(8);
  });
});

/** A washer of ten seconds, and heads behind it that never want for room. */
const line: ShiftLine = {
  duration: 3000,
  warmUp: 0,
  start: 'empty',
  washer: { station: 'W', row: 1, rows: 0, stroke: 2, dwell: 8, zones: [] },
  conveyors: [],
  wayRoom: Number.POSITIVE_INFINITY,
  closing: {
    station: 'K',
    heads: 1,
    perBottle: 5,
    room: Number.POSITIVE_INFINITY,
    transit: 0,
    rejected: 0,
    stops: [
      {
        cause: 'jam',
        between: 985,
        clear: 30,
        owner: 'machine',
        counts: 'clock',
        pattern: { kind: 'constant' },
      },
    ],
  },
  holds: [{ rule: 'stops with', by: 'closing', until: 'running' }],
  lineStops: [],
};

describe('a washer that stops with the heads', () => {
  // by hand: down 985 to 1015 and 2000 to 2030; strokes at 0, 10 .. 980; 1015 .. 1995; 2030 .. 2990 and after it none
  it('begins no stroke while they are stopped, and loses those seconds to their cause', () => {
    const machine = new ShiftMachine(line);
    machine.run(1, 0);
    const { stroke } = machine.events.rows;
    const by = [...stroke.slice(0, machine.rowCount)].filter((at) => at < 3000);
    const every10 = (from: number, to: number): number[] =>
      Array.from({ length: (to - from) / 10 + 1 }, (_, i) => from + 10 * i);
    expect(by).toEqual([...every10(0, 980), ...every10(1015, 1995), ...every10(2030, 2990)]);
    const { minutes } = shiftFigures(line, runShifts(line, { seed: 1, first: 0, shifts: 1 }));
    const held = minutes.filter(({ state }) => state === 'held');
    // ready at 990 and 2005
    expect(held).toEqual([
      { state: 'held', station: 'K', cause: 'jam', owner: 'machine', seconds: { mean: 50, spread: 0 } },
    ]);
  });

  it('goes on at its own pace without the rule', () => {
    const machine = new ShiftMachine({ ...line, holds: [] });
    machine.run(1, 0);
    expect(machine.events.rows.stroke[299]).toBe(2990);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLine } from './any-line.arbitrary.ts';
import { orderOfEvents } from './event-graph.ts';
import { lineGraph } from './line-graph.ts';
import type { LineTimes } from './line-times.ts';
import { fallingSupply } from './testing/falling-supply.ts';
import { simulatedLine } from './testing/simulated-line.ts';
import { walkLine } from './walk-line.ts';

/** As in the test of the period: two rows have room on a belt of 20 s. */
const twoOnTheBelt: LineTimes = {
  washer: { station: 'W', row: 1, stroke: 1, dwell: 0.5 },
  way: [{ station: 'C', step: 'convey', seconds: 20, accumulates: false }],
  wayRoom: 2,
  fill: { station: 'F', lanes: 1, travelIn: 0, lift: 0, lag: 0, filling: 15, drip: 0, lower: 0, clearOut: 0 },
  holds: [],
};

describe('an hour of a line whose conveyors stand with what stands at their ends', () => {
  it('lets its rows out when belts do that are moved by a clock, each fill from the supply', () => {
    let told = 0;
    fc.assert(
      fc.property(anyLine({ belts: true }), fc.double({ min: 0, max: 1, noNaN: true }), (line, slower) => {
        // a hold leaves no second row on the way that could stand
        const times = { ...line, holds: [] };
        const graph = lineGraph(times)!;
        if (orderOfEvents(graph) === undefined) return;
        const fillTime = (set: number): number => 5.003 + slower * set;
        const outs = simulatedLine(times, 25, fillTime);
        const { fills } = walkLine(times, graph, fallingSupply(fillTime), outs[15]! - outs[0]!);
        expect(fills.length).toBeGreaterThanOrEqual(15);
        for (const [i, fill] of fills.entries()) {
          expect(Math.abs(fill.out - outs[i]!)).toBeLessThan(1e-8);
          expect(fill.fillTime).toBe(fillTime(i));
        }
        const way = times.way.map(({ accumulates: _, ...piece }) => piece);
        const free = walkLine({ ...times, way }, graph, fallingSupply(fillTime), outs[15]! - outs[0]!);
        if (Math.abs(free.fills[14]!.out - fills[14]!.out) > 1e-6) told += 1;
      }),
      { numRuns: 40 },
    );
    // where no belt cost anything, nothing was told apart
    expect(told).toBeGreaterThan(3);
  });

  it('is slower by what the belt costs, worked by hand: outs at 36, 51, 70.5 and 85.5 s', () => {
    const graph = lineGraph(twoOnTheBelt)!;
    const { fills } = walkLine(
      twoOnTheBelt,
      graph,
      fallingSupply(() => 15),
      49.5,
    );
    [36, 51, 70.5, 85.5].forEach((out, i) => {
      expect(fills[i]!.out).toBeCloseTo(out, 9);
    });
  });

  it('says where it stood still when a fill never ends, and lets out what was filled before', () => {
    const graph = lineGraph(twoOnTheBelt)!;
    const supply = fallingSupply(() => 15);
    const { fills, stuck } = walkLine(
      twoOnTheBelt,
      graph,
      {
        ...supply,
        row: (stored) => (stored.drawn >= 3 ? { stuck: true, lanes: ['L1'] } : supply.row(stored)),
      },
      3600,
    );
    expect(fills.map(({ out }) => out)).toEqual([36, 51, 70.5]);
    expect(stuck).toEqual({ at: 70.5, lanes: ['L1'] });
  });
});

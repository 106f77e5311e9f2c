import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLine } from './any-line.arbitrary.ts';
import { orderOfEvents } from './event-graph.ts';
import { lineGraph } from './line-graph.ts';
import { waitingCircle } from './waiting-circle.ts';

describe('what waits for each other', () => {
  it('is named where nothing can be put in an order, and nowhere else', () => {
    let stuck = 0;
    fc.assert(
      fc.property(anyLine(), fc.integer({ min: 1, max: 3 }), (line, room) => {
        const graph = lineGraph({ ...line, wayRoom: room })!;
        const circle = waitingCircle(graph);
        expect(circle.length > 0).toBe(orderOfEvents(graph) === undefined);
        if (circle.length > 0) stuck += 1;
      }),
      { numRuns: 60 },
    );
    expect(stuck).toBeGreaterThan(0);
  });

  it('is a row that has no room until a set begins that lacks it', () => {
    const graph = lineGraph({
      washer: { station: '+WASH', row: 2, stroke: 2, dwell: 8 },
      way: [],
      wayRoom: 2,
      fill: {
        station: '+FILL',
        lanes: 4,
        travelIn: 1,
        lift: 0,
        lag: 0,
        filling: 9,
        drip: 0,
        lower: 1,
        clearOut: 1,
      },
      holds: [],
    })!;
    expect(waitingCircle(graph)).toEqual(['+WASH stroke 2 (room on the way)', '+FILL fill start 1']);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLine } from './any-line.arbitrary.ts';
import type { LineTimes } from './line-times.ts';
import { nextLoop } from './next-loop.ts';
import { solveLine } from './solve-line.ts';

/** Line of the acceptance reference, check case 1: periods of its loops listed there (computed). */
const line: LineTimes = {
  washer: { station: 'W', row: 3, stroke: 4, dwell: 12 },
  way: [],
  wayRoom: Number.POSITIVE_INFINITY,
  fill: { station: 'F', lanes: 3, travelIn: 2, lift: 0, lag: 0, filling: 13, drip: 1, lower: 0, clearOut: 2 },
  closing: { station: 'K', heads: 1, perBottle: 4, room: 3 },
  holds: [{ rule: 'H1', until: 'fill end' }],
};

describe('the loop that decides next', () => {
  it('is the filler at 18 s where the interlock holds the line at 19 s', () => {
    const solved = solveLine(line)!;
    if ('deadlock' in solved) throw new Error('deadlock');
    expect(solved.cycle.period).toBeCloseTo(19, 9);
    const next = nextLoop(solved.graph, solved.cycle)!;
    expect(next.period).toBeCloseTo(18, 9);
    expect(new Set(next.loop.flatMap(({ steps }) => steps.map(({ station }) => station)))).toEqual(
      new Set(['F']),
    );
  });

  it('is never longer than the one that decides, and another', () => {
    fc.assert(
      fc.property(anyLine({ bounded: true }), (times) => {
        const solved = solveLine(times);
        if (solved === undefined || 'deadlock' in solved) return;
        const next = nextLoop(solved.graph, solved.cycle);
        if (next === undefined) return;
        expect(next.period).toBeLessThanOrEqual(solved.cycle.period * (1 + 1e-9));
        expect(solved.cycle.loop.every((arc) => next.loop.includes(arc))).toBe(false);
      }),
      { numRuns: 40 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLine } from './any-line.arbitrary.ts';
import type { LineTimes } from './line-times.ts';
import { solveLine } from './solve-line.ts';
import { simulatedLine } from './testing/simulated-line.ts';

const endless = Number.POSITIVE_INFINITY;

/** A row comes onto a belt of 20 s one second after its stroke begins; two have room; a fill takes 15 s. */
const twoOnTheBelt = (accumulates: boolean): LineTimes => ({
  washer: { station: 'W', row: 1, stroke: 1, dwell: 0.5 },
  way: [{ station: 'C', step: 'convey', seconds: 20, accumulates }],
  wayRoom: 2,
  fill: { station: 'F', lanes: 1, travelIn: 0, lift: 0, lag: 0, filling: 15, drip: 0, lower: 0, clearOut: 0 },
  holds: [],
});

const solved = (times: LineTimes) => {
  const line = solveLine(times);
  if (line === undefined || 'deadlock' in line) throw new Error('no line');
  return line;
};

describe('a conveyor that stands with what stands at its end', () => {
  it('costs 2.25 s a set where it stops a row 0.5 s after it came on, worked by hand', () => {
    expect(solved(twoOnTheBelt(true)).period).toBeCloseTo(15, 9);
    // strokes at 21 and 36 s come on at 22 and 37; the belt stands from 22.5 to 36, so starts are at 21, 36, 55.5, 70.5, 90
    const line = solved(twoOnTheBelt(false));
    expect(line.period).toBeCloseTo((15 + 19.5) / 2, 9);
    expect(line.byBelts).toBeCloseTo(2.25, 9);
    const outs = simulatedLine(twoOnTheBelt(false), 4);
    [36, 51, 70.5, 85.5].forEach((out, i) => {
      expect(outs[i]).toBeCloseTo(out, 9);
    });
  });

  it('costs nothing where one row at a time is on the way, or none waits at its end', () => {
    const held = { ...twoOnTheBelt(false), holds: [{ rule: 'H', until: 'release' as const }] };
    expect(solved(held).period).toBeCloseTo(36, 9);
    expect(solved(held).byBelts).toBeUndefined();
    const slow = {
      ...twoOnTheBelt(false),
      washer: { station: 'W', row: 1, stroke: 1, dwell: 20 },
      wayRoom: endless,
    };
    expect(solved(slow).period).toBeCloseTo(21, 9);
  });

  it('has the period of belts whose rows are moved on by a clock, and is never quicker for it', () => {
    fc.assert(
      fc.property(anyLine({ belts: true, bounded: true }), (times) => {
        const line = solveLine(times);
        if (line === undefined || 'deadlock' in line) return;
        const { fills } = line.graph;
        const outs = simulatedLine(times, 120 * fills);
        const mean = (outs.at(-1)! - outs[outs.length - 1 - 60 * fills]!) / (60 * fills);
        // repeats of another number of blocks leave a remainder in the mean of 60
        expect(Math.abs(mean / line.period - 1)).toBeLessThan(0.02);
        expect(line.period).toBeGreaterThanOrEqual((line.cycle.period / fills) * (1 - 1e-12));
      }),
      { numRuns: 15 },
    );
  });
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { anyLine } from './any-line.arbitrary.ts';
import { solveLine } from './solve-line.ts';
import { simulatedLine } from './testing/simulated-line.ts';
import { timeLeftForFill } from './time-left-for-fill.ts';

const secondsABottle = (times: Parameters<typeof solveLine>[0], filling: number): number => {
  const line = solveLine({ ...times, fill: { ...times.fill!, lag: 0, filling } });
  return line === undefined || 'deadlock' in line ? 0 : 1 / line.rate;
};

it('a fill that takes all the time left meets the agreed rate, one that takes more does not', () => {
  fc.assert(
    fc.property(anyLine(), fc.double({ min: 1.001, max: 6, noNaN: true }), (times, stretch) => {
      const shortest = secondsABottle(times, 0);
      if (!(shortest > 0.01)) return;
      const allowed = stretch * shortest;
      const { left } = timeLeftForFill(times, 1 / allowed)!;
      expect(left).toBeGreaterThan(0);
      expect(secondsABottle(times, left)).toBeLessThan(allowed + 1e-8);
      expect(secondsABottle(times, left + 0.01)).toBeGreaterThan(allowed);
    }),
    { numRuns: 500 },
  );
});

it('no time is left only where a line that fills in no time misses the rate', () => {
  fc.assert(
    fc.property(anyLine(), fc.double({ min: 0.5, max: 2, noNaN: true }), (times, stretch) => {
      const shortest = secondsABottle(times, 0);
      if (!(shortest > 0.01)) return;
      const found = timeLeftForFill(times, 1 / (stretch * shortest));
      if (found !== undefined && found.left < -1e-6) expect(stretch).toBeLessThan(1);
    }),
    { numRuns: 300 },
  );
});

it('check case of a line held at 19 s by its interlock: at 568.421 an hour 13 s are left', () => {
  const times = {
    washer: { station: 'W', row: 3, stroke: 4, dwell: 12 },
    way: [],
    wayRoom: Number.POSITIVE_INFINITY,
    fill: {
      station: 'F',
      lanes: 3,
      travelIn: 2,
      lift: 0,
      lag: 0,
      filling: 8,
      drip: 1,
      lower: 0,
      clearOut: 2,
    },
    closing: { station: 'K', heads: 1, perBottle: 4, room: 3 },
    holds: [{ rule: 'H1', until: 'fill end' }],
  } as const;
  const found = timeLeftForFill(times, 568.421 / 3600)!;
  // six printed digits of the rate
  expect(found.left).toBeCloseTo(13, 4);
  expect(found.others.reduce((sum, seconds) => sum + seconds, 0)).toBe(6);
  const outs = simulatedLine({ ...times, fill: { ...times.fill, filling: found.left } }, 21);
  expect(((outs[20]! - outs[0]!) / 20) * (568.421 / 3600)).toBeCloseTo(3, 4);
});

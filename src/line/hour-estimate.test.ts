import { describe, expect, it } from 'vitest';
import { hourEstimate } from './hour-estimate.ts';

const steady = { periodAt: () => 12, lanes: 4, draw: 0.008, makeUp: 0.001, usable: Number.POSITIVE_INFINITY };

describe('an hour as a flow', () => {
  it('is the rate of the cycle where the make-up covers the draw', () => {
    const { rate, drawnMost, ranDry } = hourEstimate(steady, 3600);
    expect(rate.mean).toBeCloseTo(4 / 12, 12);
    expect(drawnMost).toBe(0);
    expect(ranDry).toBeUndefined();
  });
  it('runs dry when usable volume over net draw has passed, and then fills what the make-up gives', () => {
    // net draw 0.008/12 - 0.0004 = 0.000267 m3/s: 0.4 m3 last 1 500 s
    const { rate, ranDry } = hourEstimate({ ...steady, makeUp: 0.0004, usable: 0.4 }, 3600);
    expect(ranDry).toBeCloseTo(1500, 6);
    expect(rate.mean).toBeCloseTo((4 * (1500 / 12 + (2100 * 0.0004) / 0.008)) / 3600, 10);
    expect(rate.worst).toBeCloseTo((4 * 0.0004) / 0.008, 12);
  });
  it('follows the closed form of a tank that empties through its own head', () => {
    // fills a second k sqrt(h), h = 1 - V/A: sqrt(h) = 1 - k d t/(2 A), bottles from the volume gone
    const [k, area, draw, duration] = [0.05, 2, 0.004, 3600];
    const { drawnMost } = hourEstimate(
      {
        periodAt: (drawn) => 1 / (k * Math.sqrt(Math.max(0, 1 - drawn / area))),
        lanes: 4,
        draw,
        makeUp: 0,
        usable: 1.9,
      },
      duration,
    );
    const root = 1 - (k * draw * duration) / (2 * area);
    expect(drawnMost).toBeCloseTo(area * (1 - root * root), 4);
  });
});

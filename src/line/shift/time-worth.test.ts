import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLine } from '../any-line.arbitrary.ts';
import type { LineTimes } from '../line-times.ts';
import { solveLine } from '../solve-line.ts';
import { timeWorth } from './time-worth.ts';

/** Line of the acceptance reference, check case 1: loops and periods listed there (computed). */
const line = (filling: number): LineTimes => ({
  washer: { station: 'W', row: 3, stroke: 4, dwell: 12 },
  way: [],
  wayRoom: Number.POSITIVE_INFINITY,
  fill: { station: 'F', lanes: 3, travelIn: 2, lift: 0, lag: 0, filling, drip: 1, lower: 0, clearOut: 2 },
  closing: { station: 'K', heads: 1, perBottle: 4, room: 3 },
  holds: [{ rule: 'H1', until: 'fill end' }],
});

describe('what a second of a time is worth', () => {
  it('of a fill that holds the washer ends where the washer alone takes as long', () => {
    // loops: washer 4 + 12, hold 4 + 2 + fill; so the fill counts down to 10 s, and 3 bottles in 16 s come there
    const worth = timeWorth(line(13), 'fill')!;
    expect(worth.rate * 3600).toBeCloseTo(568.421, 3);
    expect(worth.worth).toBeCloseTo(3 / 19 ** 2, 12);
    expect(worth.until).toBeCloseTo(10, 9);
    expect(worth.rateThere * 3600).toBeCloseTo(675, 9);
  });

  it('is nothing while another loop is longer', () => {
    expect(timeWorth(line(8), 'fill')).toMatchObject({ worth: 0 });
    expect(timeWorth(line(8), 'dwell')!.worth).toBeCloseTo(3 / 16 ** 2, 12);
  });

  it('is the straight piece of the period down to its break, and not beyond, whatever the line', () => {
    fc.assert(
      fc.property(
        anyLine({ bounded: true }),
        fc.constantFrom('fill' as const, 'dwell' as const),
        (times, of) => {
          const worth = timeWorth(times, of);
          if (worth === undefined || worth.worth === 0) return;
          const rateAt = (seconds: number): number => {
            const { washer, fill } = times;
            const changed =
              of === 'fill'
                ? { ...times, fill: { ...fill!, filling: seconds } }
                : { ...times, washer: { ...washer!, dwell: seconds } };
            return (solveLine(changed) as { rate: number }).rate;
          };
          const until = worth.until ?? 0;
          const perSecond = worth.worth / worth.rate ** 2;
          const onPiece = (seconds: number): number => 1 / worth.rate - perSecond * (worth.now - seconds);
          const middle = 0.5 * (worth.now + until);
          expect(Math.abs(1 / rateAt(middle) - onPiece(middle))).toBeLessThan(1e-9);
          expect(Math.abs(1 / rateAt(until) - onPiece(until))).toBeLessThan(1e-9);
          if (until > 0.02) expect(1 / rateAt(until - 0.01)).toBeGreaterThan(onPiece(until - 0.01));
        },
      ),
      { numRuns: 60 },
    );
  });
});

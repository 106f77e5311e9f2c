import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastGatedIndex } from './contact-gated.ts';
import { rollingSums, spreadOf } from './contact-log.ts';
import { contactByShare, leastIndexByShare } from './contact-share.ts';
import { soakContact } from './contact-soak.ts';
import { wettedTime } from './wetted-time.ts';

const seconds = fc.double({ min: 0.01, max: 1000, noNaN: true });
const stations = fc.integer({ min: 1, max: 12 });
const log = fc.array(seconds, { minLength: 12, maxLength: 60 });

describe('contact from a log', () => {
  it('the shortest is never longer than the mean of all rows, the longest never shorter', () => {
    fc.assert(
      fc.property(log, stations, (intervals, n) => {
        const sums = rollingSums(intervals, n);
        const { least, median, most } = spreadOf(sums);
        const mean = sums.reduce((a, b) => a + b, 0) / sums.length;
        expect(least).toBeLessThanOrEqual(mean * (1 + 1e-12));
        expect(most).toBeGreaterThanOrEqual(mean * (1 - 1e-12));
        expect(median).toBeGreaterThanOrEqual(least);
        expect(median).toBeLessThanOrEqual(most);
      }),
    );
  });

  it('a log of one index repeated gives every row the nominal residence', () => {
    fc.assert(
      fc.property(seconds, stations, (index, n) => {
        for (const sum of rollingSums(Array(20).fill(index), n)) expect(sum / (n * index)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('a longer hold never shortens a contact, and contact is never longer than residence', () => {
    fc.assert(
      fc.property(log, stations, seconds, seconds, fc.nat(11), (intervals, n, dead, timeOut, at) => {
        const wetted = (of: readonly number[]) =>
          rollingSums(
            of.map((interval) => wettedTime(interval, dead, timeOut)),
            n,
          );
        const held = intervals.map((interval, i) => (i === at ? interval + 100 : interval));
        const [before, after, residence] = [wetted(intervals), wetted(held), rollingSums(intervals, n)];
        before.forEach((contact, row) => {
          expect(after[row]!).toBeGreaterThanOrEqual(contact * (1 - 1e-12));
          expect(contact).toBeLessThanOrEqual(residence[row]! * (1 + 1e-12));
        });
      }),
    );
  });

  it('the order of the log decides its shortest contact, not its mean', () => {
    const mixed = spreadOf(rollingSums([9, 20, 9, 20], 2)).least;
    const bunched = spreadOf(rollingSums([9, 9, 20, 20], 2)).least;
    expect([mixed, bunched]).toEqual([29, 18]);
  });
});

describe('the smallest index', () => {
  it('gives the contact exactly, and one that is a thousandth smaller does not', () => {
    fc.assert(
      fc.property(stations, seconds, fc.double({ min: 0.05, max: 1, noNaN: true }), (n, required, share) => {
        const index = leastIndexByShare(n, share, required);
        expect(contactByShare(n, index, share) / required).toBeCloseTo(1, 12);
        expect(contactByShare(n, 0.999 * index, share)).toBeLessThan(required);
      }),
    );
    fc.assert(
      fc.property(stations, seconds, seconds, (n, required, dead) => {
        const index = leastGatedIndex(n, required, dead, Number.POSITIVE_INFINITY);
        expect((n * wettedTime(index, dead, 1e9)) / required).toBeCloseTo(1, 6);
        expect(n * wettedTime(0.999 * index, dead, 1e9)).toBeLessThan(required);
      }),
    );
  });

  it('is none where the spray shuts before the contact is reached', () => {
    expect(leastGatedIndex(4, 120, 4, 29.9)).toBeNaN();
    expect(leastGatedIndex(4, 120, 4, 30)).toBe(34);
  });

  it('a bottle that empties longer than it stays has no contact, never a negative one', () => {
    expect(soakContact(2, 3, 10)).toBe(0);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { handDistance } from './approach.ts';
import { averageCoverage } from './average-coverage.ts';
import { hour, year } from './bounds.ts';
import { channelLifetime } from './channel-lifetime.ts';
import { safetyEntries } from './entries.ts';
import { failureRate, failureRateSheet } from './failure-rate.ts';
import { failureRows } from './failure-rate-table.ts';
import { guardDistance } from './guard-distance.ts';
import { levelOf, levels } from './levels.ts';
import { distanceForms, longestStopTime, longestStopTimeSheet } from './longest-stop-time.ts';
import { parallelFieldDistanceSheet } from './parallel-field-distance.ts';
import { openings, reachThrough } from './reach-through.ts';
import { simplifiedLevelSheet } from './simplified-level.ts';
import { stopTimeUsed } from './stop-time-used.ts';
import { twoChannels } from './two-channels.ts';
import { verticalFieldDistance } from './vertical-field-distance.ts';

const times = fc.double({ min: 0.001, max: 5, noNaN: true });
const intrusions = fc.double({ min: 0, max: 0.3, noNaN: true });
const lifetimes = fc.double({ min: 3 * year, max: 100 * year, noNaN: true });
const codes = (got: ReturnType<typeof runSheet>) => (got.ok ? [] : got.problems.map(({ code }) => code));

describe('laws of distances', () => {
  it('a longer stop or a coarser field never lets a field come nearer', () => {
    fc.assert(
      fc.property(times, times, fc.double({ min: 0.001, max: 0.07, noNaN: true }), (t1, t2, d) => {
        expect(verticalFieldDistance(Math.max(t1, t2), d)).toBeGreaterThanOrEqual(
          verticalFieldDistance(Math.min(t1, t2), d),
        );
        expect(verticalFieldDistance(t1, 0.07)).toBeGreaterThanOrEqual(verticalFieldDistance(t1, d));
      }),
    );
  });

  it('the two steps meet at 500 mm without a jump, and neither passes the other unseen', () => {
    fc.assert(
      fc.property(times, intrusions, (t, c) => {
        const distance = handDistance(t, c);
        // one max of both would be 0.5 where the first step asks less, one min would miss the floor of the second
        expect(distance).toBeLessThanOrEqual(Math.max(0.1, 2 * t + c));
        expect(distance).toBeGreaterThanOrEqual(
          Math.min(Math.max(0.1, 2 * t + c), Math.max(0.5, 1.6 * t + c)),
        );
      }),
    );
    expect(handDistance(0.25, 0)).toBe(0.5);
    expect(handDistance(0.25 + 1e-9, 0)).toBe(0.5);
  });

  it('the longest stop time fits the mounted distance, and a microsecond more does not', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...distanceForms),
        fc.double({ min: 0.11, max: 20, noNaN: true }),
        intrusions,
        (form, mounted, intrusion) => {
          const time = longestStopTime(form, mounted, intrusion);
          fc.pre(time !== undefined);
          // the forms turned round by hand, apart from the search
          const byHand = {
            hand: mounted <= 0.5 - 1e-12 ? (mounted - intrusion) / 2 : (mounted - intrusion) / 1.6,
            walking: (mounted - intrusion) / 1.6,
            'two-hand': (mounted - intrusion) / 1.6,
            us: (mounted - intrusion) / 1.6002,
          }[form];
          expect(Math.abs(time! - byHand)).toBeLessThan(1e-9);
        },
      ),
    );
    expect(codes(runSheet(longestStopTimeSheet, { form: 'hand', mounted: 0.05, intrusion: 0 }))).toEqual([
      'MOUNTED_TOO_NEAR',
    ]);
  });

  it('a wider gap is reached through as far or farther, and a slot farther than a hole', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...openings),
        fc.double({ min: 1e-4, max: 0.12, noNaN: true }),
        fc.double({ min: 1e-4, max: 0.12, noNaN: true }),
        (opening, one, other) => {
          expect(reachThrough(opening, Math.max(one, other), 1)).toBeGreaterThanOrEqual(
            reachThrough(opening, Math.min(one, other), 1),
          );
          expect(reachThrough('slot', one, 1)).toBeGreaterThanOrEqual(reachThrough('square', one, 1));
          expect(reachThrough('square', one, 1)).toBeGreaterThanOrEqual(reachThrough('round', one, 1));
        },
      ),
    );
  });

  it('opening that takes longer than the stop leaves the gap alone, never less', () => {
    expect(guardDistance({ time: 0.2, opening: 5, gap: 0.011, added: 0 })).toBeCloseTo(0.1, 12);
  });

  it('a low field of coarse resolution is refused with the height that it wants', () => {
    const got = runSheet(parallelFieldDistanceSheet, {
      time: 0.3,
      height: 0.2,
      resolution: 0.07,
      edition: '2010',
    });
    expect(got.ok ? [] : got.problems).toEqual([
      { code: 'FIELD_TOO_LOW', path: 'height', given: 0.2, allowed: '>= 300 mm' },
    ]);
  });

  it('a distance without an edition is asked for one', () => {
    expect(codes(runSheet(parallelFieldDistanceSheet, { time: 0.3, height: 0.3, resolution: 0.05 }))).toEqual(
      ['SHEET_INPUT_MISSING'],
    );
  });

  it('no reading lies above the stop time that is used', () => {
    fc.assert(
      fc.property(fc.array(times, { minLength: 2, maxLength: 20 }), (readings) => {
        const { time, settledBy, highest } = stopTimeUsed({ readings, wear: 0 });
        expect(time).toBeGreaterThanOrEqual(highest);
        expect(settledBy === 'highest').toBe(time === highest);
      }),
    );
  });
});

describe('laws of controls that fail', () => {
  it('equal channels stand for themselves, unequal ones for something between', () => {
    fc.assert(
      fc.property(lifetimes, lifetimes, (one, other) => {
        expect(twoChannels(one, one) / one).toBeCloseTo(1, 12);
        expect(twoChannels(one, other)).toBeGreaterThanOrEqual(Math.min(one, other) * (1 - 1e-12));
        expect(twoChannels(one, other)).toBeLessThanOrEqual(Math.max(one, other) * (1 + 1e-12));
      }),
    );
  });

  it('n equal parts last an n-th of one, and one more part never helps', () => {
    fc.assert(
      fc.property(lifetimes, lifetimes, fc.integer({ min: 1, max: 50 }), (one, other, n) => {
        expect((channelLifetime([one], [n]) * n) / one).toBeCloseTo(1, 12);
        expect(channelLifetime([one, other], [n, 1])).toBeLessThan(channelLifetime([one], [n]));
      }),
    );
  });

  it('the average coverage lies between the least and the greatest', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(share, lifetimes), { minLength: 1 }), (parts) => {
        const shares = parts.map(([dc]) => dc);
        const average = averageCoverage(
          shares,
          parts.map(([, lifetime]) => lifetime),
        );
        expect(average).toBeGreaterThanOrEqual(Math.min(...shares) - 1e-12);
        expect(average).toBeLessThanOrEqual(Math.max(...shares) + 1e-12);
      }),
    );
  });

  it('every column of the table falls with the lifetime, and more coverage or a higher category fails less', () => {
    for (const [i, { years, rates }] of failureRows.entries()) {
      const next = failureRows[i + 1]?.rates;
      for (const [k, rate] of rates.entries()) {
        if (rate === undefined) continue;
        if (next !== undefined) expect(next[k], `${years} y, column ${k}`).toBeLessThan(rate);
        if (k > 0) expect(rate, `${years} y, column ${k}`).toBeLessThan(rates[k - 1]!);
      }
    }
  });

  it('between two rows the lower one counts, never a better one', () => {
    fc.assert(
      fc.property(lifetimes, fc.constantFrom<'2' | '3'>('2', '3'), (lifetime, category) => {
        const { row, rate } = failureRate({ category, coverage: 0.9, lifetime });
        expect(row).toBeLessThanOrEqual(lifetime * (1 + 1e-9));
        expect(rate).toBe(failureRate({ category, coverage: 0.9, lifetime: row }).rate);
      }),
    );
  });

  it('the table by classes is never more than one level from the table of rates', () => {
    for (const category of ['B', '1', '2', '3', '4']) {
      for (const coverage of [0, 0.6, 0.9, 0.99]) {
        for (const { years } of failureRows) {
          const given = { category, coverage, lifetime: years * year };
          const simple = runSheet(simplifiedLevelSheet, given);
          const fine = runSheet(failureRateSheet, given);
          if (!simple.ok || !fine.ok) continue;
          const apart = levels.indexOf(fine.value.outputs.level) - levels.indexOf(simple.value.outputs.level);
          expect(Math.abs(apart), JSON.stringify(given)).toBeLessThanOrEqual(1);
        }
      }
    }
  });

  it('more dangerous failures never give a higher level', () => {
    const rate = fc.double({ min: -9, max: -4.001, noNaN: true }).map((power) => 10 ** power / hour);
    fc.assert(
      fc.property(rate, rate, (one, other) => {
        expect(levelOf(Math.max(one, other)) <= levelOf(Math.min(one, other))).toBe(true);
      }),
    );
  });

  it('what a category asks and does not get is refused, all at once', () => {
    const run = (category: string, coverage: number, years: number) =>
      codes(runSheet(failureRateSheet, { category, coverage, lifetime: years * year }));
    expect(run('4', 0.9, 20)).toEqual(['CATEGORY_COVERAGE', 'CATEGORY_LIFETIME']);
    expect(run('3', 0.5, 2)).toEqual(['CATEGORY_COVERAGE', 'CATEGORY_LIFETIME']);
    expect(run('1', 0, 29)).toEqual(['CATEGORY_LIFETIME']);
    expect(run('3', 0.6, 3)).toEqual([]);
    expect(
      codes(runSheet(simplifiedLevelSheet, { category: 'B', coverage: 0, lifetime: 40 * year })),
    ).toEqual(['CATEGORY_NO_FIELD']);
  });
});

it('every sheet carries the caution, and no word calls anything safe', () => {
  for (const { sheet } of safetyEntries) {
    expect(sheet.limits.map(({ code }) => code)).toContain('CAUTION_GUARDING');
  }
  expect(JSON.stringify(safetyEntries.map(({ text }) => text))).not.toMatch(/\bsafe(ly|ty|r|st)?\b/i);
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { binomialCdf, binomialUpperTail } from '../../statistics/binomial.ts';
import { acceptancePlan } from './acceptance-plan.ts';
import { meanTimeShown } from './mean-time-shown.ts';
import { runToShowAvailability } from './run-to-show-availability.ts';
import { runToShowMeanTime } from './run-to-show-mean-time.ts';
import { shareBounds } from './share-bounds.ts';
import { trialsWanted } from './trials-wanted.ts';

const counts = fc
  .tuple(fc.integer({ min: 1, max: 3000 }), fc.double({ min: 0, max: 1, noNaN: true }))
  .map(([looked, part]) => ({ looked, found: Math.round(part * looked) }));
const confidence = fc.constantFrom(0.8, 0.9, 0.95, 0.99);

it('at an exact bound so many or more extreme counts come with the chance that was allowed', () => {
  fc.assert(
    fc.property(counts, confidence, ({ looked, found }, p) => {
      const { least, most, low, high } = shareBounds({ looked, found, confidence: p });
      if (found > 0) {
        expect(binomialUpperTail(found, looked, least)).toBeCloseTo(1 - p, 9);
        expect(binomialUpperTail(found, looked, low)).toBeCloseTo(0.5 * (1 - p), 9);
      }
      if (found < looked) {
        expect(binomialCdf(found, looked, most)).toBeCloseTo(1 - p, 9);
        expect(binomialCdf(found, looked, high)).toBeCloseTo(0.5 * (1 - p), 9);
      }
    }),
  );
});

it('good and bad bottles are bounded by mirrored shares', () => {
  fc.assert(
    fc.property(counts, confidence, ({ looked, found }, p) => {
      const good = shareBounds({ looked, found, confidence: p });
      const bad = shareBounds({ looked, found: looked - found, confidence: p });
      expect(good.least).toBeCloseTo(1 - bad.most, 11);
      expect(good.low).toBeCloseTo(1 - bad.high, 11);
      expect(good.scoreLow).toBeCloseTo(1 - bad.scoreHigh, 11);
    }),
  );
});

it('without a bad one the bound is a root: 1 - alpha^(1/n), and so is the number of trials', () => {
  for (const looked of [1, 10, 300, 675]) {
    const { most } = shareBounds({ looked, found: 0, confidence: 0.95 });
    expect(most).toBeCloseTo(1 - 0.05 ** (1 / looked), 13);
  }
  for (const share of [0.2, 0.05, 0.01, 0.0005]) {
    expect(trialsWanted({ share, allowed: 0, confidence: 0.95 })).toBe(
      Math.ceil(Math.log(0.05) / Math.log(1 - share)),
    );
  }
});

it('as many trials as wanted show the share, one fewer does not', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.002, max: 0.5, noNaN: true }),
      fc.integer({ min: 0, max: 12 }),
      confidence,
      (share, allowed, p) => {
        const trials = trialsWanted({ share, allowed, confidence: p });
        const shown = (looked: number) => shareBounds({ looked, found: allowed, confidence: p }).most;
        expect(shown(trials)).toBeLessThanOrEqual(share * (1 + 1e-9));
        if (trials > allowed + 1) expect(shown(trials - 1)).toBeGreaterThan(share * (1 - 1e-9));
      },
    ),
  );
});

it('a trial without a stop shows its time over -ln alpha', () => {
  expect(meanTimeShown({ running: 28_800, stops: 0, endedBy: 'time', confidence: 0.95 })).toBeCloseTo(
    28_800 / -Math.log(0.05),
    8,
  );
});

it('a proof run of the length asked, with the stops allowed, shows just what was agreed', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 40 }), confidence, (allowed, p) => {
      const { running } = runToShowMeanTime({ agreed: 1800, allowed, confidence: p, expected: 3600 });
      const shown = meanTimeShown({ running, stops: allowed, endedBy: 'time', confidence: p });
      expect(shown).toBeCloseTo(1800, 6);
    }),
  );
});

it('half the margin wants four times the run', () => {
  const line = { betweenStops: 1800, clearing: 90, confidence: 0.95, passing: 0.9 };
  const own = 1800 / 1890;
  const long = runToShowAvailability({ ...line, agreed: own - 0.01 }).duration;
  const short = runToShowAvailability({ ...line, agreed: own - 0.02 }).duration;
  expect(long / short).toBeCloseTo(4, 8);
});

it('a plan accepts its own shares with their chances', () => {
  const { mostlyAccepted, evenly, mostlyRefused } = acceptancePlan({ looked: 80, accepted: 2, share: 0.01 });
  expect(binomialCdf(2, 80, mostlyAccepted)).toBeCloseTo(0.95, 11);
  expect(binomialCdf(2, 80, evenly)).toBeCloseTo(0.5, 11);
  expect(binomialCdf(2, 80, mostlyRefused)).toBeCloseTo(0.1, 11);
});

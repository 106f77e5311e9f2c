import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { counterShare, serialShare } from './rinse-chain.ts';
import { rinseNeedSheet } from './rinse-need.ts';
import { sumpConcentration } from './sump.ts';

const ratio = fc.double({ min: 0.01, max: 200, noNaN: true });
const stages = fc.integer({ min: 1, max: 6 });
const mixing = fc.double({ min: 0.05, max: 1, noNaN: true });

/** Concentrations in each stage of a counter-current chain, from its balances solved one by one backwards. */
const solvedBalances = (r: number, n: number): number => {
  // v c_(i-1) + Q c_(i+1) = (v + Q) c_i with c_(n+1) = 0, from c_n = 1 up to c_0
  let [below, here] = [0, 1];
  for (let stage = n; stage >= 1; stage--) [below, here] = [here, (1 + r) * here - r * below];
  return 1 / here;
};

describe('rinses', () => {
  it('counter-current is what the balances of its stages give', () => {
    fc.assert(
      fc.property(ratio, stages, (r, n) => {
        expect(counterShare(1, r, n, 1) / solvedBalances(r, n)).toBeCloseTo(1, 8);
      }),
    );
  });

  it('counter-current never leaves more than the same water given out fresh', () => {
    fc.assert(
      fc.property(ratio, stages, mixing, (water, n, e) => {
        const same = serialShare(1, water / n, n, e);
        expect(counterShare(1, water, n, e)).toBeLessThanOrEqual(same * (1 + 1e-12));
      }),
    );
  });

  it('one stage is the same either way: carried over carried and water', () => {
    fc.assert(
      fc.property(ratio, mixing, (water, e) => {
        expect(counterShare(1, water, 1, e)).toBeCloseTo(1 / (1 + e * water), 12);
        expect(serialShare(1, water, 1, e)).toBeCloseTo(1 / (1 + e * water), 12);
      }),
    );
  });

  it('more water, more stages or better mixing never leaves more', () => {
    fc.assert(
      fc.property(ratio, stages, mixing, (water, n, e) => {
        for (const share of [serialShare, counterShare]) {
          const now = share(1, water, n, e) * (1 + 1e-12);
          expect(share(1, 1.5 * water, n, e)).toBeLessThanOrEqual(now);
          expect(share(1, water, n + 1, e)).toBeLessThanOrEqual(now);
          expect(share(1, water, n, Math.min(1, 1.5 * e))).toBeLessThanOrEqual(now);
        }
      }),
    );
  });

  it('no water leaves all, and nothing carried leaves nothing', () => {
    for (const share of [serialShare, counterShare]) {
      expect(share(4e-6, 0, 3, 1)).toBe(1);
      expect(share(0, 1e-4, 3, 1)).toBe(0);
    }
  });

  it('the water for a dilution gives that dilution, a thousandth less does not', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.01, max: 1e6, noNaN: true }), stages, mixing, (wanted, n, e) => {
        const run = runSheet(rinseNeedSheet, { ratio: wanted, carry: 4e-6, stages: n, mixing: e });
        if (!run.ok) throw new Error('refused');
        const { counterWater, serialWater } = run.value.outputs;
        expect(1 / counterShare(4e-6, counterWater, n, e) / wanted).toBeCloseTo(1, 8);
        expect(1 / serialShare(4e-6, serialWater / n, n, e) / wanted).toBeCloseTo(1, 8);
        expect(1 / counterShare(4e-6, 0.999 * counterWater, n, e)).toBeLessThan(wanted);
        expect(counterWater).toBeLessThanOrEqual(serialWater * (1 + 1e-9));
      }),
    );
  });
});

it('a sump ends between fresh water and what is carried in, lower with more overflow', () => {
  fc.assert(
    fc.property(ratio, ratio, (carried, overflow) => {
      const [some, more] = [1, 2].map((times) => sumpConcentration(1, 1, carried, times * overflow));
      expect(some).toBeLessThanOrEqual(carried);
      expect(more).toBeLessThan(some!);
    }),
  );
});

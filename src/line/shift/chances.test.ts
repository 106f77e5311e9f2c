import { describe, expect, it } from 'vitest';
import { meanInterval } from '../../sheets/rate/interval-of-runs.ts';
import { boundsOf } from './bounds-of.ts';
import { chancesOf, nextOf } from './chances.ts';
import { meanOf, sampled, struckBottles } from './sampled.ts';
import { unitExponential } from './unit-exponential.ts';

describe('numbers by chance', () => {
  it('are those of xoshiro128**', () => {
    // first outputs from the state 1, 2, 3, 4 as the public test of its reference code has them (memory); by hand too
    const state = Int32Array.of(1, 2, 3, 4);
    expect([0, 0, 0, 0].map(() => nextOf(state, 0))).toEqual([11520, 0, 5927040, 70819200]);
  });

  it('of a name do not feel which other names there are', () => {
    const few = chancesOf(['a', 'b']);
    const many = chancesOf(['x', 'b', 'y']);
    for (const shift of [0, 1, 7]) {
      few.begin(5, shift);
      many.begin(5, shift);
      many.next(0);
      for (let i = 0; i < 50; i++) expect(many.next(1)).toBe(few.next(1));
    }
  });

  it('differ from shift to shift, from seed to seed and from name to name', () => {
    const firsts = new Set<number>();
    const chances = chancesOf(['a', 'b', 'stop a', 'stop b']);
    for (const seed of [0, 1, 2, 2 ** 40, 2 ** 40 + 1]) {
      for (let shift = 0; shift < 500; shift++) {
        chances.begin(seed, shift);
        for (let stream = 0; stream < 4; stream++) firsts.add(chances.next(stream));
      }
    }
    // of 10,000 numbers of 32 bits some 0.01 pairs agree by chance
    expect(firsts.size).toBeGreaterThan(9997);
  });

  it('fall as often into each sixteenth: chi-squared of first numbers over shifts', () => {
    const chances = chancesOf(['a']);
    const counts = new Array<number>(16).fill(0);
    for (let shift = 0; shift < 16_000; shift++) {
      chances.begin(3, shift);
      counts[chances.next(0) >>> 28]! += 1;
    }
    const chi = counts.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
    // 0.1 % and 99.9 % of chi-squared with 15 degrees of freedom, NIST/SEMATECH e-Handbook 1.3.6.7.4 (memory)
    expect(chi).toBeGreaterThan(3.483);
    expect(chi).toBeLessThan(37.697);
  });
});

describe('times by chance', () => {
  it('of mean 1 are the logarithm, to the last digits', () => {
    for (const whole of [0, 1, 2, 3, 1000, 2 ** 16, 2 ** 31, 3 * 2 ** 30, 2 ** 32 - 2, 2 ** 32 - 1]) {
      const exact = -Math.log((whole + 0.5) / 2 ** 32);
      expect(Math.abs(unitExponential(whole) - exact)).toBeLessThan(4e-15 + 4e-15 * exact);
    }
  });

  it.each([
    { kind: 'exponential', mean: 3 } as const,
    { kind: 'uniform', low: 2, high: 5 } as const,
    { kind: 'quantiles', quantiles: [1, 2, 4, 4.5] } as const,
  ])('of $kind have their mean', (draw) => {
    const chances = chancesOf(['a']);
    chances.begin(1, 0);
    const next = sampled(draw, chances, 0);
    const { low, high } = meanInterval(Array.from({ length: 20_000 }, next), 0.99);
    expect(low).toBeLessThan(meanOf(draw));
    expect(high).toBeGreaterThan(meanOf(draw));
  });

  it('bottles are struck as often as the chance says, in rows of any size', () => {
    const chances = chancesOf(['a']);
    chances.begin(2, 0);
    const struck = struckBottles(0.03, chances, 0);
    struck.begin();
    let [bottles, hit] = [0, 0];
    for (let row = 0; row < 50_000; row++) {
      bottles += 1 + (row % 7);
      hit += struck.of(1 + (row % 7));
    }
    // five standard deviations of a binomial count
    expect(Math.abs(hit - 0.03 * bottles)).toBeLessThan(5 * Math.sqrt(0.03 * 0.97 * bottles));
  });
});

describe('the interval over shifts', () => {
  it('from mean and spread is that of the list', () => {
    // ten average delays of a textbook: 2.03 +- 0.32 at 90 % (acceptance reference, check case 8: read)
    const delays = [1.53, 1.66, 1.24, 2.34, 2.0, 1.69, 2.69, 2.86, 1.7, 2.6];
    const { low, high } = boundsOf({ mean: 2.031, spread: Math.sqrt(0.3091) }, delays.length, 0.9)!;
    expect(low).toBeCloseTo(1.709, 3);
    expect(high).toBeCloseTo(2.353, 3);
  });
});

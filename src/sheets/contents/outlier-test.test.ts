import { describe, expect, it } from 'vitest';
import { outlierTest } from './outlier-test.ts';

/** n; one-sided and two-sided at 5 %; the same at 1 %. Computed by scipy 1.17; to n = 20 as printed lists have it. */
const table = [
  [3, 1.1531, 1.1543, 1.1546, 1.1547],
  [5, 1.6714, 1.715, 1.7489, 1.7637],
  [6, 1.8221, 1.8871, 1.9442, 1.9728],
  [8, 2.0317, 2.1266, 2.2208, 2.2744],
  [10, 2.1761, 2.29, 2.4097, 2.4821],
  [12, 2.285, 2.4116, 2.5494, 2.6357],
  [15, 2.409, 2.5483, 2.7049, 2.8061],
  [20, 2.5566, 2.7082, 2.8838, 3.0008],
  [30, 2.7451, 2.9085, 3.1029, 3.2361],
  [50, 2.957, 3.1282, 3.3366, 3.4825],
  [100, 3.2095, 3.3841, 3.6002, 3.754],
] as const;

/** Any list of n values has the critical value of its n. */
const listOf = (n: number): number[] => Array.from({ length: n }, (_, i) => 1e-6 * (500 + Math.sin(i)));

describe("Grubbs' critical values", () => {
  it.each(table)('of %d values', (n, one5, two5, one1, two1) => {
    const values = listOf(n);
    const critical = (sides: 'one' | 'two', significance: number): number =>
      outlierTest({ values, sides, significance }).critical;
    expect(Math.abs(critical('one', 0.05) - one5)).toBeLessThan(6e-5);
    expect(Math.abs(critical('two', 0.05) - two5)).toBeLessThan(6e-5);
    expect(Math.abs(critical('one', 0.01) - one1)).toBeLessThan(6e-5);
    expect(Math.abs(critical('two', 0.01) - two1)).toBeLessThan(6e-5);
  });

  it('eight values can never lie three standard deviations out', () => {
    const values = [...Array.from({ length: 7 }, () => 500e-6), 900e-6];
    const { statistic } = outlierTest({ values, sides: 'two', significance: 0.05 });
    expect(statistic).toBeCloseTo(7 / Math.sqrt(8), 10);
    expect(statistic).toBeLessThan(3);
  });
});

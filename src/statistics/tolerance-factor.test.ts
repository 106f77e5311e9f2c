import { describe, expect, it } from 'vitest';
import { toleranceFactor } from './tolerance-factor.ts';

/**
 * n; then by confidence/coverage .90/.90 .90/.95 .90/.99 .95/.90 .95/.95 .95/.99 .99/.90 .99/.95 .99/.99.
 * Computed by scipy 1.17.
 */
const table: readonly (readonly number[])[] = [
  [5, 2.742, 3.4, 4.666, 3.407, 4.203, 5.741, 5.362, 6.578, 8.939],
  [6, 2.494, 3.092, 4.243, 3.006, 3.708, 5.062, 4.411, 5.406, 7.335],
  [8, 2.219, 2.754, 3.783, 2.582, 3.187, 4.354, 3.497, 4.285, 5.812],
  [10, 2.066, 2.568, 3.532, 2.355, 2.911, 3.981, 3.048, 3.738, 5.074],
  [12, 1.966, 2.448, 3.371, 2.21, 2.736, 3.747, 2.777, 3.41, 4.633],
  [15, 1.867, 2.329, 3.212, 2.068, 2.566, 3.52, 2.521, 3.102, 4.222],
  [20, 1.765, 2.208, 3.052, 1.926, 2.396, 3.295, 2.276, 2.808, 3.832],
  [25, 1.702, 2.132, 2.952, 1.838, 2.292, 3.158, 2.129, 2.633, 3.601],
  [30, 1.657, 2.08, 2.884, 1.777, 2.22, 3.064, 2.03, 2.515, 3.447],
  [40, 1.598, 2.01, 2.793, 1.697, 2.125, 2.941, 1.902, 2.364, 3.249],
  [50, 1.559, 1.965, 2.735, 1.646, 2.065, 2.862, 1.821, 2.269, 3.125],
  [100, 1.47, 1.861, 2.601, 1.527, 1.927, 2.684, 1.639, 2.056, 2.85],
];
const columns = [0.9, 0.95, 0.99].flatMap((confidence) =>
  [0.9, 0.95, 0.99].map((coverage) => ({ confidence, coverage })),
);

describe('one-sided tolerance factors', () => {
  it.each(table.map((row) => ({ n: row[0]!, factors: row.slice(1) })))('of $n values', ({ n, factors }) => {
    for (const [j, { confidence, coverage }] of columns.entries()) {
      expect(Math.abs(toleranceFactor(n, coverage, confidence) - factors[j]!)).toBeLessThan(5.1e-4);
    }
  });

  it('more degrees of freedom than the mean has values ask for less', () => {
    expect(toleranceFactor(12, 0.99, 0.95, 120)).toBeLessThan(toleranceFactor(12, 0.99, 0.95));
  });
});

import { expect, it } from 'vitest';
import { chiSquaredCdf, chiSquaredQuantile } from './chi-squared.ts';
import { fCdf, fQuantile } from './f-distribution.ts';
import { studentCdf, studentQuantile } from './student.ts';

const shares = [0.001, 0.005, 0.025, 0.05, 0.1, 0.3, 0.5, 0.7, 0.9, 0.95, 0.975, 0.99, 0.995, 0.999];
const degrees = [0.7, 1.5, 12.34, ...Array.from({ length: 200 }, (_, i) => i + 1), 1e3, 1e5];

it('a quantile is where the distribution has its share, for all degrees and shares', () => {
  const worst = { student: 0, chiSquared: 0, f: 0 };
  for (const dof of degrees) {
    for (const p of shares) {
      const off = (cdf: number): number => Math.abs(cdf - p) / Math.min(p, 1 - p);
      worst.student = Math.max(worst.student, off(studentCdf(studentQuantile(p, dof), dof)));
      worst.chiSquared = Math.max(worst.chiSquared, off(chiSquaredCdf(chiSquaredQuantile(p, dof), dof)));
      worst.f = Math.max(worst.f, off(fCdf(fQuantile(p, 4, dof), 4, dof)));
    }
  }
  // 1 - p loses digits of its own in the upper tail: 1e-16 of 1e-3
  expect(Math.max(...Object.values(worst))).toBeLessThan(1e-11);
});

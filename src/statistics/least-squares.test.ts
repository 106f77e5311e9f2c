import { describe, expect, it } from 'vitest';
import { leastSquares } from './least-squares.ts';
import { polynomialFit } from './polynomial-fit.ts';
import { digits } from './testing/digits.ts';
import { type LinearSet, linearSets } from './testing/strd-linear.ts';

const fitOf = ({ model, x, y, coefficients }: LinearSet) => {
  if (model === 'polynomial') return polynomialFit(x[0]!, y, coefficients.length - 1);
  const constant = model === 'columns' ? [1] : [];
  return leastSquares(
    y.map((_, row) => [...constant, ...x.map((column) => column[row]!)]),
    y,
  );
};

describe.each(linearSets)('NIST StRD linear regression, $name', (set) => {
  const { coefficients, covarianceUnit, residualVariance, dof, rank } = fitOf(set);
  const exactFit = set.residualDeviation === 0;

  it('the coefficients are met to 13 digits', () => {
    expect(rank).toBe(set.coefficients.length);
    expect(dof).toBe(set.y.length - set.coefficients.length);
    for (const [j, certified] of set.coefficients.entries()) {
      expect(digits(coefficients[j]!, certified), `B${j}`).toBeGreaterThan(13);
    }
  });

  it('their standard deviations and that of the residuals are met to 13 digits', () => {
    const s = Math.sqrt(residualVariance!);
    // an exact fit certifies 0: what is left is the rounding of y, which Wampler2 holds to sixteen digits
    const least = exactFit ? 12 : 13;
    expect(digits(s, set.residualDeviation)).toBeGreaterThan(least);
    for (const [j, certified] of set.deviations.entries()) {
      expect(digits(s * Math.sqrt(covarianceUnit[j]![j]!), certified), `s(B${j})`).toBeGreaterThan(least);
    }
  });
});

describe('least squares', () => {
  const x = [600, 700, 800, 900, 1000, 1100];
  const y = [302.4, 353.6, 402.3, 451.5, 502.9, 551.0];
  const design = x.map((n) => [1, n]);

  it('a weight of two counts as the same observation twice', () => {
    const weighted = leastSquares(design, y, [2, 1, 1, 1, 1, 1]);
    const twice = leastSquares([design[0]!, ...design], [y[0]!, ...y]);
    expect(weighted.coefficients[0]).toBeCloseTo(twice.coefficients[0]!, 11);
    expect(weighted.coefficients[1]).toBeCloseTo(twice.coefficients[1]!, 14);
    expect(weighted.covarianceUnit[1]![1]).toBeCloseTo(twice.covarianceUnit[1]![1]!, 18);
    expect(weighted.dof).toBe(twice.dof - 1);
  });

  it('residuals stand at right angles to the design', () => {
    const { residuals } = leastSquares(design, y);
    expect(Math.abs(residuals.reduce((sum, e) => sum + e, 0))).toBeLessThan(1e-11);
    expect(Math.abs(residuals.reduce((sum, e, i) => sum + e * x[i]!, 0))).toBeLessThan(1e-8);
  });

  it('a column that follows from those before it is not determined, and the rest is fitted without it', () => {
    const same = leastSquares(
      x.map((n) => [1, n, 1000 - n / 3]),
      y,
    );
    const without = leastSquares(design, y);
    expect(same.determined).toEqual([true, true, false]);
    expect(same.rank).toBe(2);
    expect(same.dof).toBe(4);
    expect(same.coefficients).toEqual([...without.coefficients, 0]);
    expect(same.covarianceUnit[2]).toEqual([0, 0, 0]);
  });

  it('one preset alone says nothing of a slope', () => {
    const fit = leastSquares(
      [600, 600, 600].map((n) => [1, n]),
      [302, 303, 304],
    );
    expect(fit.determined).toEqual([true, false]);
    expect(fit.coefficients[0]).toBeCloseTo(303, 12);
    expect(fit.residualVariance).toBeCloseTo(1, 12);
  });

  it('as many observations as coefficients leave the variance unknown', () => {
    const fit = leastSquares(
      [
        [1, 600],
        [1, 700],
      ],
      [300, 350],
    );
    expect(fit.residualVariance).toBeUndefined();
    expect(fit.dof).toBe(0);
    expect(fit.coefficients[1]).toBeCloseTo(0.5, 14);
  });
});

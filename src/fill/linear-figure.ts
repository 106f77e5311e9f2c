import type { Symmetric } from '../statistics/cholesky.ts';
import type { Fit } from './fit.ts';
import { type Estimated, estimatedOf, type VariancePart } from './student-sum.ts';

/** v' A v of a whole symmetric matrix. */
export const quadratic = (a: Symmetric, v: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < v.length; i++) {
    const vi = v[i]!;
    if (vi === 0) continue;
    const row = a[i]!;
    let part = 0;
    for (let j = 0; j < v.length; j++) part += row[j]! * v[j]!;
    sum += vi * part;
  }
  return sum;
};

/** Variance of a linear figure of the unknowns by where it comes from: scatter of volumes, of times, what was known before. */
export const figureParts = (fit: Fit, slope: Float64Array): readonly VariancePart[] => {
  const { whole, fromVolumes, fromTimes } = fit.covariance;
  const volumes = quadratic(fromVolumes, slope);
  const times = quadratic(fromTimes, slope);
  return [
    { variance: volumes, dof: fit.volumeNoise.dof },
    { variance: times, dof: fit.timeNoise.dof },
    { variance: Math.max(0, quadratic(whole, slope) - volumes - times), dof: Number.POSITIVE_INFINITY },
  ];
};

/** A linear figure of the unknowns with what makes it uncertain. */
export const linearFigure = (fit: Fit, value: number, slope: Float64Array): Estimated =>
  estimatedOf(value, figureParts(fit, slope));

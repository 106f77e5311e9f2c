import { studentQuantile } from '../statistics/student.ts';
import type { EstimateBasis } from './lane-estimate.ts';
import { quadratic } from './linear-figure.ts';
import { varianceOf } from './noise.ts';

/** A reading beside what the lanes' values give for it. */
export interface Residual {
  readonly trial: number;
  readonly lane: number;
  readonly of: 'volume' | 'time';
  /** What was read: m3 or s. */
  readonly read: number;
  /** What the lanes' values give. */
  readonly fitted: number;
  /** Miss in its own standard deviations, the reading's own pull on the fit taken off. */
  readonly standard: number;
  /** Further out than chance would bring any of all readings: named, never dropped. */
  readonly outlying: boolean;
}

/** Chance that a set without an outlier has one named. */
const falseAlarm = 0.01;

/** Residual beyond which a reading is outlying; with two degrees of freedom or fewer nothing is. */
const furthestOf = (dof: number, readings: number): number => {
  if (!(dof > 2)) return Infinity;
  const t = studentQuantile(1 - (0.5 * falseAlarm) / Math.max(1, readings), dof - 1);
  return Math.sqrt((dof * t * t) / (dof - 1 + t * t));
};

/**
 * Every reading against the fit.
 *
 * Method   r = miss/(s sqrt(1 - h)); outlying by t = r sqrt((dof - 1)/(dof - r^2)) on Student with dof - 1, the share of
 *          false alarms parted among all readings of the kind: r^2 > dof t^2/(dof - 1 + t^2)
 * Source   deleted residual as in R. D. Cook, S. Weisberg, Residuals and Influence in
 *          Regression, 2.2 (memory)
 */
export const residualsOf = ({
  readings,
  fit,
}: Pick<EstimateBasis, 'readings' | 'fit'>): readonly Residual[] => {
  const countOf = (of: 'volumes' | 'times'): number =>
    readings.reduce((sum, each) => each[of].reduce((n, list) => n + list.length, sum), 0);
  const found: Residual[] = [];
  const kinds = [
    { of: 'volume', list: 'volumes', noise: fit.volumeNoise },
    { of: 'time', list: 'times', noise: fit.timeNoise },
  ] as const;
  const furthest = kinds.map(({ list, noise }) => furthestOf(noise.dof, countOf(list)));
  readings.forEach((each, s) => {
    each.setup.lanes.forEach((lane, i) => {
      kinds.forEach(({ of, list, noise }, kind) => {
        if (each[list][i]!.length === 0) return;
        const fitted = fit.answers[s]![list][i]!;
        const known = quadratic(fit.covariance.whole, fit.slopes[s]![list][i]!);
        for (const { trial, value, stated } of each[list][i]!) {
          const variance = varianceOf(noise, stated);
          // a reading that alone decides its lane leaves nothing to be seen
          const left = Math.max(0.02, 1 - known / variance);
          const standard = (value - fitted) / Math.sqrt(variance * left);
          const outlying = Math.abs(standard) > furthest[kind]!;
          found.push({ trial, lane, of, read: value, fitted, standard, outlying });
        }
      });
    });
  });
  return found;
};

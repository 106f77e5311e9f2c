import { fTails } from './f-distribution.ts';
import { univariate } from './univariate.ts';

export interface AnalysisOfVariance {
  readonly betweenSquares: number;
  readonly withinSquares: number;
  readonly betweenDof: number;
  readonly withinDof: number;
  readonly betweenMean: number;
  readonly withinMean: number;
  /** Mean square between over within; unknown where nothing varies within the groups. */
  readonly f: number | undefined;
  /** Chance of an F as great as this one if the groups are alike. */
  readonly chance: number | undefined;
}

/**
 * One-way analysis of variance: do the means of several groups differ by more than their values scatter?
 *
 * Method   sums of squares of the group means about the whole mean, and of the values about their group mean
 * Symbols  groups  two or more lists, not all of one value
 * Returns  sums of squares, degrees of freedom, mean squares, F and its upper tail
 * Cost     O(values)
 * Source   NIST Statistical Reference Datasets, analysis of variance, for the figures that it is held against
 */
export const analysisOfVariance = (groups: readonly (readonly number[])[]): AnalysisOfVariance => {
  const whole = univariate(groups.flat()).mean;
  const means = groups.map((group) => univariate(group).mean);
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const betweenSquares = sum(groups.map((group, i) => group.length * (means[i]! - whole) ** 2));
  const withinSquares = sum(groups.map((group, i) => sum(group.map((value) => (value - means[i]!) ** 2))));
  const betweenDof = groups.length - 1;
  const withinDof = groups.flat().length - groups.length;
  const betweenMean = betweenSquares / betweenDof;
  const withinMean = withinSquares / withinDof;
  const f = withinMean > 0 ? betweenMean / withinMean : undefined;
  const chance = f === undefined ? undefined : fTails(f, betweenDof, withinDof).upper;
  return {
    betweenSquares,
    withinSquares,
    betweenDof,
    withinDof,
    betweenMean,
    withinMean,
    f,
    chance,
  };
};

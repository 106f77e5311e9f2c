import type { Problem } from '../../quantity/problem.ts';
import { polynomialFit } from '../../statistics/polynomial-fit.ts';
import { listLengths } from '../list-lengths.ts';

/** A straight line through the fills of one lane, and what it knows of itself. */
export interface LaneLine {
  /** What passes after the count is reached, m3. */
  readonly afterRun: number;
  /** Volume of one count, m3. */
  readonly perCount: number;
  readonly afterRunUncertainty: number;
  readonly perCountUncertainty: number;
  /** Between the two, -1 to 1. */
  readonly correlation: number;
  /** Standard deviation of a fill of weight one about the line. */
  readonly scatter: number;
  readonly dof: number;
  readonly observations: number;
  /** Variance of the line at a preset, m6. */
  readonly varianceAt: (preset: number) => number;
}

/**
 * Straight line of volume over preset for one lane.
 *
 * Method   weighted least squares; the preset is exact, the weighing is not
 * Symbols  counts   N_i  presets                  >= 2 different ones
 *          volumes  V_i  filled                   m3
 *          weights  w_i  1/sigma_i^2 up to a factor, all alike where left out
 * Returns  intercept, slope, their standard uncertainties and correlation, scatter
 * Assumes  independent fills; one population: no first fills after a stop, no bottle that overflowed
 * Cost     O(fills)
 * Source   JCGM 100:2008, H.3
 */
export const laneLineOf = (
  counts: readonly number[],
  volumes: readonly number[],
  weights?: readonly number[],
): LaneLine => {
  const fit = polynomialFit(counts, volumes, 1, weights);
  // two fills on two presets have no scatter that could be known; the sheets ask for three
  const variance = fit.residualVariance ?? 0;
  const [[aa = 0, ab = 0] = [], [, bb = 0] = []] = fit.covarianceUnit;
  return {
    afterRun: fit.coefficients[0]!,
    perCount: fit.coefficients[1]!,
    afterRunUncertainty: Math.sqrt(variance * aa),
    perCountUncertainty: Math.sqrt(variance * bb),
    correlation: ab / Math.sqrt(aa * bb),
    scatter: Math.sqrt(variance),
    dof: fit.dof,
    observations: counts.length,
    varianceAt: (preset) => Math.max(0, variance * (aa + preset * (2 * ab + preset * bb))),
  };
};

const leastScatter = 1e-15;

/** Lists of one length, two different presets, and a line that rises with the count. */
export const laneLineProblems = (
  counts: readonly number[],
  volumes: readonly number[],
  weights?: readonly number[],
): readonly Problem[] => {
  const lengths = listLengths({ counts, volumes });
  if (lengths.length > 0) return lengths;
  if (!polynomialFit(counts, volumes, 1, weights).determined[1]) {
    return [{ code: 'LINE_ONE_PRESET', path: 'counts', given: counts[0] }];
  }
  const { perCount, scatter } = laneLineOf(counts, volumes, weights);
  if (!(perCount > 0)) return [{ code: 'LINE_NOT_RISING', path: 'volumes', given: perCount }];
  // no weighing repeats to twelve digits or a nanolitre: such data are computed, and a band about them says nothing
  if (!(scatter > Math.max(leastScatter, 1e-12 * Math.max(...volumes))))
    return [{ code: 'LINE_NO_SCATTER', path: 'volumes', given: scatter }];
  return [];
};

/** Fewer presets or fills than a lane's line wants. */
export const fewTrials = (counts: readonly number[]): boolean =>
  new Set(counts).size < 3 || counts.length < 12;

/** A preset outside those that were tried. */
export const beyondTrials = (counts: readonly number[], preset: number): boolean =>
  preset < Math.min(...counts) || preset > Math.max(...counts);

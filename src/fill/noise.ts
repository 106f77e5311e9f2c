import { chiSquaredQuantile } from '../statistics/chi-squared.ts';

/** A reading with the variance that its instrument is said to have. */
export interface Miss {
  /** Reading less what the lanes' values give. */
  readonly miss: number;
  /** Square of its standard uncertainty. */
  readonly stated: number;
}

/** How far single readings of one kind lie from their mean: variance = scale (own + stated). */
export interface Noise {
  /** Of the bottles themselves, beside what the instrument adds. */
  readonly own: number;
  /** Below 1 where even the stated uncertainty is more than was seen. */
  readonly scale: number;
  readonly dof: number;
}

export const varianceOf = ({ own, scale }: Noise, stated: number): number => scale * (own + stated);

/** A scatter so small that only one in a hundred sets would show it is chance, not knowledge. */
const implausible = 0.01;
/** Where to start above nought, as a share of the mean square: each step at least doubles what is far too small. */
const tiny = 1e-12;
const mostSteps = 100;
/** With fewer degrees of freedom a scatter says next to nothing. */
const leastDof = 3;

/**
 * Spread of readings about their means.
 *
 * Method   own variance v >= least with sum miss^2/(v + stated) = dof, by Newton's steps; where that sum is too small already
 *          at the least, the scale instead, unless the scatter is implausibly small
 * Symbols  dof      scalar  readings less what their means have used up
 *          least    scalar  variance that is always there, such as that of the pulse's phase
 *          typical  scalar  variance taken where hardly anything was repeated
 * Source   restricted maximum likelihood of one variance beside known ones, derived
 */
export const noiseOf = (misses: readonly Miss[], dof: number, least: number, typical: number): Noise => {
  if (!(dof >= 0.5)) return { own: Math.max(least, typical), scale: 1, dof: 1 };
  const excess = (own: number): number => {
    let sum = -dof;
    for (const { miss, stated } of misses) sum += (miss * miss) / (own + stated);
    return sum;
  };
  let own = least;
  let scale = 1;
  const over = excess(least);
  if (over > 0) {
    let squares = 0;
    let most = 0;
    for (const { miss, stated } of misses) {
      squares += miss * miss;
      most = Math.max(most, stated);
    }
    // were all stated as the worst the variance would be the mean square less that: never more than it is;
    // the sum falls and bends upwards with the variance: from below each step of Newton's stays below
    own = Math.max(least, squares / dof - most, tiny * (squares / dof));
    for (let i = 0; i < mostSteps; i++) {
      let sum = -dof;
      let fall = 0;
      for (const { miss, stated } of misses) {
        const variance = own + stated;
        const share = (miss * miss) / variance;
        sum += share;
        fall += share / variance;
      }
      const step = sum / fall;
      own += step;
      if (!(step > 1e-6 * own)) break;
    }
  } else if (over + dof > chiSquaredQuantile(implausible, dof)) scale = (over + dof) / dof;
  if (dof < leastDof) return { own: Math.max(own, typical), scale: Math.max(1, scale), dof };
  return { own, scale, dof };
};

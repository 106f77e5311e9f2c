import { studentQuantile } from '../statistics/student.ts';

/** A part of a variance, with the degrees of freedom that stand behind it. */
export interface VariancePart {
  readonly variance: number;
  readonly dof: number;
}

/** Value with its standard deviation and the degrees of freedom behind that. */
export interface Estimated {
  readonly value: number;
  readonly deviation: number;
  readonly dof: number;
}

/** An interval that holds the truth with a stated confidence. */
export interface Within extends Estimated {
  readonly lower: number;
  readonly upper: number;
  readonly confidence: number;
}

/**
 * Value with the sum of independent variances.
 *
 * Method   dof = u^4 / sum(u_i^4/dof_i)
 * Source   JCGM 100:2008, G.4.1, Welch and Satterthwaite (memory)
 */
export const estimatedOf = (value: number, parts: readonly VariancePart[]): Estimated => {
  let variance = 0;
  let below = 0;
  for (const part of parts) {
    variance += part.variance;
    below += (part.variance * part.variance) / part.dof;
  }
  return {
    value,
    deviation: Math.sqrt(Math.max(0, variance)),
    dof: below > 0 ? (variance * variance) / below : Number.POSITIVE_INFINITY,
  };
};

/** Half width in standard deviations of a two-sided interval. */
const factor = (dof: number, confidence: number): number => studentQuantile(0.5 + 0.5 * confidence, dof);

export const withinOf = (estimated: Estimated, confidence: number): Within => {
  const half = factor(estimated.dof, confidence) * estimated.deviation;
  return { ...estimated, lower: estimated.value - half, upper: estimated.value + half, confidence };
};

/** The same for what can be nothing but not less, such as a volume. */
export const atLeastNothing = (within: Within): Within => ({ ...within, lower: Math.max(0, within.lower) });

/** The same for what is above zero by its nature, such as a time: even on a scale of ratios. */
export const positiveWithinOf = (estimated: Estimated, confidence: number): Within => {
  const ratio = Math.exp((factor(estimated.dof, confidence) * estimated.deviation) / estimated.value);
  return { ...estimated, lower: estimated.value / ratio, upper: estimated.value * ratio, confidence };
};

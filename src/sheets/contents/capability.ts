import { chiSquaredQuantile } from '../../statistics/chi-squared.ts';
import { normalQuantile } from '../../statistics/normal.ts';
import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { chances, fillVolumes, sampleSizes, someFillVolumes, spreads } from './fill-bounds.ts';
import { handbook } from './fill-sources.ts';

interface CapabilityInputs {
  readonly lowest: number;
  readonly highest: number;
  readonly mean: number;
  readonly spread: number;
  readonly bottles: number;
  readonly confidence: number;
}

interface CapabilityOutputs {
  readonly potential: number;
  readonly toHighest: number;
  readonly toLowest: number;
  readonly capability: number;
  readonly potentialLow: number;
  readonly potentialHigh: number;
  readonly capabilityLow: number;
  readonly capabilityHigh: number;
}

/**
 * Capability of a fill between two limits, with its confidence limits.
 *
 * Method   Cp by chi-squared, exact; Cpk by its normal approximation
 * Symbols  lowest, highest  LSL, USL  m3
 *          mean, spread     xbar, s   m3, of one lane in a settled run
 *          bottles          n
 *          confidence       P         two-sided
 * Returns  Cp, both sides, Cpk, limits of Cp and Cpk
 * Assumes  normal contents; a settled process
 * Cost     O(1)
 * Source   NIST/SEMATECH e-Handbook 6.1.6 (indices); A. F. Bissell, 1990, for the limits of Cpk (memory)
 */
const capability = (i: CapabilityInputs): CapabilityOutputs => {
  const dof = i.bottles - 1;
  const tail = 0.5 * (1 - i.confidence);
  const potential = (i.highest - i.lowest) / (6 * i.spread);
  const toHighest = (i.highest - i.mean) / (3 * i.spread);
  const toLowest = (i.mean - i.lowest) / (3 * i.spread);
  const index = Math.min(toHighest, toLowest);
  const half = -normalQuantile(tail) * Math.sqrt(1 / (9 * i.bottles) + index ** 2 / (2 * dof));
  return {
    potential,
    toHighest,
    toLowest,
    capability: index,
    potentialLow: potential * Math.sqrt(chiSquaredQuantile(tail, dof) / dof),
    potentialHigh: potential * Math.sqrt(chiSquaredQuantile(1 - tail, dof) / dof),
    capabilityLow: index - half,
    capabilityHigh: index + half,
  };
};

export const capabilitySheet = defineSheet<CapabilityInputs, CapabilityOutputs>({
  id: 'contents/capability',
  version: 1,
  inputs: {
    lowest: weighedField('volume', 'L', fillVolumes),
    highest: weighedField('volume', 'U', someFillVolumes),
    mean: weighedField('volume', '\\bar x', fillVolumes),
    spread: weighedField('volume', 's', spreads),
    bottles: numberField('count', 'n', sampleSizes),
    confidence: numberField('ratio', 'P', { ...chances, assumed: 0.95 }),
  },
  outputs: {
    potential: numberField('ratio', 'C_p'),
    toHighest: numberField('ratio', 'C_{pu}'),
    toLowest: numberField('ratio', 'C_{pl}'),
    capability: numberField('ratio', 'C_{pk}'),
    potentialLow: numberField('ratio', 'C_{p-}'),
    potentialHigh: numberField('ratio', 'C_{p+}'),
    capabilityLow: numberField('ratio', 'C_{pk-}'),
    capabilityHigh: numberField('ratio', 'C_{pk+}'),
  },
  formula: [
    'C_p = \\frac{U - L}{6 s}, \\quad C_{pu} = \\frac{U - \\bar x}{3 s}, \\quad C_{pl} = \\frac{\\bar x - L}{3 s}, \\quad C_{pk} = \\min(C_{pu}, C_{pl})',
    'C_{p\\mp} = C_p \\sqrt{\\frac{\\chi^2_{(1 \\mp P)/2,\\, n-1}}{n-1}}, \\quad C_{pk\\mp} = C_{pk} \\mp z_{(1+P)/2} \\sqrt{\\frac{1}{9 n} + \\frac{C_{pk}^2}{2 (n-1)}}',
  ],
  limits: [
    { code: 'CAPABILITY_FEW', broken: ({ bottles }) => bottles < 30 },
    { code: 'CAPABILITY_OUTSIDE', broken: (_, { capability: index }) => index < 0 },
  ],
  sources: [handbook('6.1.6')],
  check: ({ lowest, highest }) =>
    highest > lowest
      ? []
      : [{ code: 'CAPABILITY_LIMITS_CROSSED', path: 'highest', given: highest, allowed: `> ${lowest}` }],
  compute: capability,
});

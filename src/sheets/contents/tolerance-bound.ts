import { toleranceFactor } from '../../statistics/tolerance-factor.ts';
import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { chances, fillVolumes, sampleSizes, spreads } from './fill-bounds.ts';
import { presetTheory } from './fill-sources.ts';

interface ToleranceBoundInputs {
  readonly mean: number;
  readonly spread: number;
  readonly bottles: number;
  readonly coverage: number;
  readonly confidence: number;
}

interface ToleranceBoundOutputs {
  readonly factor: number;
  readonly bound: number;
}

export const toleranceBoundSheet = defineSheet<ToleranceBoundInputs, ToleranceBoundOutputs>({
  id: 'contents/tolerance-bound',
  version: 1,
  inputs: {
    mean: weighedField('volume', '\\bar x', fillVolumes),
    spread: weighedField('volume', 's', spreads),
    bottles: numberField('count', 'n', sampleSizes),
    coverage: numberField('ratio', 'p', { ...chances, assumed: 0.99 }),
    confidence: numberField('ratio', '\\gamma', { ...chances, assumed: 0.95 }),
  },
  outputs: { factor: numberField('ratio', 'k'), bound: weighedField('volume', 'x_-') },
  formula: ['x_- = \\bar x - k s, \\quad k = \\frac{t_{\\gamma;\\, n-1,\\, z_p \\sqrt n}}{\\sqrt n}'],
  limits: [{ code: 'TOLERANCE_NORMAL', broken: () => true }],
  sources: [presetTheory],
  compute: (i) => {
    const factor = toleranceFactor(i.bottles, i.coverage, i.confidence);
    return { factor, bound: i.mean - factor * i.spread };
  },
});

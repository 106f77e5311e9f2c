import { normalQuantile } from '../../statistics/normal.ts';
import { choiceField, numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { afterRuns, countVolumes, someFillVolumes, spreads, spreadsOrNone } from './fill-bounds.ts';
import { presetTheory } from './fill-sources.ts';
import { countReaching } from './level-aim.ts';
import { presetProblems } from './preset-problems.ts';

export const fillRules = ['mean', 'share', 'none'] as const;
/** The mean, the share below Q - T, or none below Q - 2T. */
export type FillRule = (typeof fillRules)[number];

interface VolumePresetInputs {
  readonly label: number;
  readonly deficiency: number;
  readonly margin: number;
  readonly spread: number;
  readonly shareBelow: number;
  readonly noneBelow: number;
  readonly afterRun: number;
  readonly perCount: number;
}

interface VolumePresetOutputs {
  readonly meanNeeded: number;
  readonly byMean: number;
  readonly byShare: number;
  readonly byNone: number;
  readonly rule: FillRule;
  readonly preset: number;
  readonly volume: number;
}

/**
 * Smallest whole count whose mean keeps three limits at once: of the mean, of the share below Q - T, of Q - 2T.
 *
 * Method   mu >= Q + margin, mu >= Q - T + z sigma, mu >= Q - 2T + z' sigma; the greatest counts
 * Symbols  label       Q      m3
 *          deficiency  T      m3, by the rule that applies
 *          margin             m3, kept for the test of the mean
 *          spread      sigma  of the contents  m3
 *          shareBelow         that may lie below Q - T
 *          noneBelow          share that counts as none below Q - 2T
 * Returns  mean needed, the three limits, which one governs, preset and its volume
 * Assumes  contents at the reference temperature of the rule; normal
 * Cost     O(1)
 * Source   derived from the three rules of the average system
 */
const volumePreset = (i: VolumePresetInputs): VolumePresetOutputs => {
  const byMean = i.label + i.margin;
  const byShare = i.label - i.deficiency - normalQuantile(i.shareBelow) * i.spread;
  const byNone = i.label - 2 * i.deficiency - normalQuantile(i.noneBelow) * i.spread;
  const meanNeeded = Math.max(byMean, byShare, byNone);
  const rule = meanNeeded === byMean ? 'mean' : meanNeeded === byShare ? 'share' : 'none';
  const preset = countReaching(meanNeeded, i.afterRun, i.perCount);
  return { meanNeeded, byMean, byShare, byNone, rule, preset, volume: i.afterRun + i.perCount * preset };
};

export const volumePresetSheet = defineSheet<VolumePresetInputs, VolumePresetOutputs>({
  id: 'contents/volume-preset',
  version: 1,
  inputs: {
    label: weighedField('volume', 'Q', someFillVolumes),
    deficiency: weighedField('volume', 'T', someFillVolumes),
    margin: weighedField('volume', 'M', { ...spreadsOrNone, assumed: 0 }),
    spread: weighedField('volume', '\\sigma', spreads),
    shareBelow: numberField('ratio', 'p_1', { least: 1e-6, most: 0.5, assumed: 0.025 }),
    noneBelow: numberField('ratio', 'p_2', { least: 1e-9, most: 0.5, assumed: 1e-4 }),
    afterRun: weighedField('volume', 'a', afterRuns),
    perCount: weighedField('volume', 'b', countVolumes),
  },
  outputs: {
    meanNeeded: weighedField('volume', '\\mu'),
    byMean: weighedField('volume', '\\mu_1'),
    byShare: weighedField('volume', '\\mu_2'),
    byNone: weighedField('volume', '\\mu_3'),
    rule: choiceField<FillRule>('\\text{rule}', fillRules),
    preset: numberField('count', 'N'),
    volume: weighedField('volume', 'V'),
  },
  formula: [
    '\\mu_1 = Q + M, \\quad \\mu_2 = Q - T - z_{p_1} \\sigma, \\quad \\mu_3 = Q - 2T - z_{p_2} \\sigma',
    '\\mu = \\max(\\mu_1, \\mu_2, \\mu_3), \\quad N = \\left\\lceil \\frac{\\mu - a}{b} \\right\\rceil, \\quad V = a + b N',
  ],
  limits: [
    { code: 'VOLUME_NO_MARGIN', broken: ({ margin }) => margin === 0 },
    { code: 'VOLUME_NONE_CHOSEN', broken: () => true },
  ],
  sources: [presetTheory],
  check: (i) => presetProblems(volumePreset(i).preset),
  compute: volumePreset,
});

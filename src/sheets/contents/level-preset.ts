import { normalQuantile } from '../../statistics/normal.ts';
import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { afterRuns, chances, countVolumes, someFillVolumes, spreads, spreadsOrNone } from './fill-bounds.ts';
import { presetTheory } from './fill-sources.ts';
import { countReaching, levelOutcome } from './level-aim.ts';
import { presetProblems } from './preset-problems.ts';

interface LevelPresetInputs {
  readonly afterRun: number;
  readonly perCount: number;
  readonly fillSpread: number;
  readonly capacity: number;
  readonly capacitySpread: number;
  readonly goal: number;
}

interface LevelPresetOutputs {
  readonly preset: number;
  readonly exactPreset: number;
  readonly volumeNeeded: number;
  readonly volume: number;
  readonly spread: number;
  readonly chance: number;
  readonly overflow: number;
  readonly shortfall: number;
}

/**
 * Smallest whole count at which the level is reached with a chance that is aimed at.
 *
 * Method   N = ceil((mu_C + z sigma_D - a)/b), sigma_D^2 = sigma_V^2 + sigma_C^2
 * Symbols  afterRun        a        m3
 *          perCount        b        m3   > 0
 *          fillSpread      sigma_V  m3   of repeated fills of this lane
 *          capacity        mu_C     m3   mean capacity of the bottles at the level
 *          capacitySpread  sigma_C  m3   bottle to bottle
 *          goal            p        chance that a bottle reaches the level
 * Returns  preset, volume and what it brings
 * Assumes  all five figures known; estimates from a few bottles want more, see level-preset-from-trials
 * Cost     O(1)
 * Source   derived
 */
export const levelPreset = (i: LevelPresetInputs): LevelPresetOutputs => {
  const spread = Math.hypot(i.fillSpread, i.capacitySpread);
  const volumeNeeded = i.capacity + normalQuantile(i.goal) * spread;
  const preset = countReaching(volumeNeeded, i.afterRun, i.perCount);
  const volume = i.afterRun + i.perCount * preset;
  return {
    preset,
    exactPreset: (volumeNeeded - i.afterRun) / i.perCount,
    volumeNeeded,
    volume,
    spread,
    ...levelOutcome(volume - i.capacity, spread),
  };
};

export const levelPresetSheet = defineSheet<LevelPresetInputs, LevelPresetOutputs>({
  id: 'contents/level-preset',
  version: 1,
  inputs: {
    afterRun: weighedField('volume', 'a', afterRuns),
    perCount: weighedField('volume', 'b', countVolumes),
    fillSpread: weighedField('volume', '\\sigma_V', spreads),
    capacity: weighedField('volume', '\\mu_C', someFillVolumes),
    capacitySpread: weighedField('volume', '\\sigma_C', spreadsOrNone),
    goal: numberField('ratio', 'p', { ...chances, assumed: 0.995 }),
  },
  outputs: {
    preset: numberField('count', 'N'),
    exactPreset: numberField('count', 'N^*'),
    volumeNeeded: weighedField('volume', 'V^*'),
    volume: weighedField('volume', 'V'),
    spread: weighedField('volume', '\\sigma_D'),
    chance: numberField('ratio', 'P'),
    overflow: weighedField('volume', 'E_+'),
    shortfall: weighedField('volume', 'E_-'),
  },
  formula: [
    '\\sigma_D = \\sqrt{\\sigma_V^2 + \\sigma_C^2}, \\quad V^* = \\mu_C + z_p \\sigma_D, \\quad N = \\left\\lceil \\frac{V^* - a}{b} \\right\\rceil, \\quad V = a + b N',
    '\\mu = V - \\mu_C, \\quad z = \\frac{\\mu}{\\sigma_D}, \\quad P = \\Phi(z), \\quad E_+ = \\mu \\Phi(z) + \\sigma_D \\varphi(z), \\quad E_- = \\sigma_D \\varphi(z) - \\mu \\Phi(-z)',
  ],
  limits: [{ code: 'PRESET_FIGURES_KNOWN', broken: () => true }],
  sources: [presetTheory],
  check: (i) => presetProblems(levelPreset(i).preset),
  compute: levelPreset,
});

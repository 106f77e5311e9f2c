import { listField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { afterRuns, chances, countVolumes, someFillVolumes, spreads, spreadsOrNone } from './fill-bounds.ts';
import { presetTheory } from './fill-sources.ts';
import { levelPreset } from './level-preset.ts';
import { presetProblems } from './preset-problems.ts';

interface CommonPresetInputs {
  readonly afterRuns: readonly number[];
  readonly perCounts: readonly number[];
  readonly fillSpreads: readonly number[];
  readonly capacity: number;
  readonly capacitySpread: number;
  readonly goal: number;
}

interface CommonPresetOutputs {
  readonly presets: readonly number[];
  readonly common: number;
  readonly prices: readonly number[];
  readonly price: number;
}

/**
 * What one preset for all lanes costs against one for each.
 *
 * Method   the greatest of the lanes' own presets; a lane gives b (common - own) more than it must
 * Symbols  afterRuns, perCounts, fillSpreads  a, b, sigma_V of each lane  m3
 * Returns  presets, the common one, price of each lane and of the mean bottle
 * Cost     O(lanes)
 * Source   derived
 */
const commonPreset = (i: CommonPresetInputs): CommonPresetOutputs => {
  const presets = i.afterRuns.map(
    (afterRun, lane) =>
      levelPreset({
        afterRun,
        perCount: i.perCounts[lane]!,
        fillSpread: i.fillSpreads[lane]!,
        capacity: i.capacity,
        capacitySpread: i.capacitySpread,
        goal: i.goal,
      }).preset,
  );
  const common = Math.max(...presets);
  const prices = presets.map((preset, lane) => i.perCounts[lane]! * (common - preset));
  return { presets, common, prices, price: prices.reduce((sum, price) => sum + price, 0) / prices.length };
};

export const commonPresetSheet = defineSheet<CommonPresetInputs, CommonPresetOutputs>({
  id: 'contents/common-preset',
  version: 1,
  inputs: {
    afterRuns: weighedList('volume', 'a_i', afterRuns),
    perCounts: weighedList('volume', 'b_i', countVolumes),
    fillSpreads: weighedList('volume', '\\sigma_{V,i}', spreads),
    capacity: weighedField('volume', '\\mu_C', someFillVolumes),
    capacitySpread: weighedField('volume', '\\sigma_C', spreadsOrNone),
    goal: numberField('ratio', 'p', { ...chances, assumed: 0.995 }),
  },
  outputs: {
    presets: listField('count', 'N_i'),
    common: numberField('count', 'N'),
    prices: weighedList('volume', 'p_i'),
    price: weighedField('volume', '\\bar p'),
  },
  formula: [
    'N_i = \\left\\lceil \\frac{\\mu_C + z_p \\sqrt{\\sigma_{V,i}^2 + \\sigma_C^2} - a_i}{b_i} \\right\\rceil, \\quad N = \\max N_i, \\quad p_i = b_i (N - N_i)',
  ],
  limits: [{ code: 'PRESET_FIGURES_KNOWN', broken: () => true }],
  sources: [presetTheory],
  check: (i) => {
    const lengths = listLengths({
      afterRuns: i.afterRuns,
      perCounts: i.perCounts,
      fillSpreads: i.fillSpreads,
    });
    return lengths.length > 0 ? lengths : presetProblems(Math.min(...commonPreset(i).presets));
  },
  compute: commonPreset,
});

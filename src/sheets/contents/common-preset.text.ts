import type { SheetText } from '../sheet-text.ts';
import { levelPresetText } from './level-preset.text.ts';
import { presetProblemWords } from './preset-words.text.ts';

export const commonPresetText: SheetText = {
  en: {
    title: 'One preset for all lanes',
    about: 'Preset of each lane for a level, and what one common preset would give away.',
    inputs: {
      afterRuns: 'After-run, each lane',
      perCounts: 'Volume of one count, each lane',
      fillSpreads: 'Standard deviation of a fill, each lane',
      capacity: 'Mean capacity of the bottles at the level',
      capacitySpread: 'Standard deviation of the capacity, bottle to bottle',
      goal: 'Chance aimed at that a bottle reaches the level',
    },
    outputs: {
      presets: 'Preset, each lane',
      common: 'Common preset',
      prices: 'Given away under the common preset, each lane',
      price: 'Given away under the common preset, mean bottle',
    },
    notes: levelPresetText.en.notes,
    problems: presetProblemWords,
  },
};

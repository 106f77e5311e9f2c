import type { SheetText } from '../sheet-text.ts';
import { presetProblemWords } from './preset-words.text.ts';

export const levelPresetText: SheetText = {
  en: {
    title: 'Preset for a level',
    about:
      'Smallest whole count at which the bottles reach the level with the chance aimed at, and what runs over.',
    inputs: {
      afterRun: 'After-run of the lane',
      perCount: 'Volume of one count',
      fillSpread: 'Standard deviation of a fill',
      capacity: 'Mean capacity of the bottles at the level',
      capacitySpread: 'Standard deviation of the capacity, bottle to bottle',
      goal: 'Chance aimed at that a bottle reaches the level',
    },
    outputs: {
      preset: 'Preset',
      exactPreset: 'Preset before rounding up',
      volumeNeeded: 'Volume needed',
      volume: 'Volume at the preset',
      spread: 'Standard deviation of delivered less held',
      chance: 'Chance that a bottle reaches the level',
      overflow: 'Mean overflow a bottle',
      shortfall: 'Mean shortfall a bottle',
    },
    notes: {
      PRESET_FIGURES_KNOWN:
        'Good for figures that are known; of a few weighed bottles the preset from trials asks for more.',
    },
    problems: presetProblemWords,
  },
};

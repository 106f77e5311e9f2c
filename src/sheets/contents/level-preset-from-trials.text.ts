import type { SheetText } from '../sheet-text.ts';
import { lineNotes, lineProblems } from './lane-line-words.text.ts';

export const levelPresetFromTrialsText: SheetText = {
  en: {
    title: 'Preset for a level, from trials',
    about:
      'Smallest whole count at which the bottles reach the level, from weighed fills and measured bottles: the fewer of them, the more runs over.',
    inputs: {
      counts: 'Preset of each fill',
      volumes: 'Volume of each fill',
      capacities: 'Capacity at the level, each bottle',
      goal: 'Chance aimed at that a bottle reaches the level',
      rule: 'What the chance is promised of',
      confidence: 'Confidence of the tolerance bound',
    },
    outputs: {
      preset: 'Preset',
      exactPreset: 'Preset before rounding up',
      volume: 'Volume at the preset',
      over: 'Mean over the mean capacity',
      spread: 'Standard deviation that counts',
      dof: 'Degrees of freedom of it',
      factor: 'Standard deviations that the mean must lie over the capacity',
      chance: 'Chance that the next bottle reaches the level',
    },
    options: {
      rule: { predictive: 'the next bottle', tolerance: 'a share of all bottles, with a confidence' },
    },
    notes: {
      ...lineNotes,
      PRESET_DEARLY_UNSURE:
        'Half or more of what runs over pays for what is not known: more fills and bottles would lower the preset.',
    },
    problems: {
      ...lineProblems,
      PRESET_TRIALS_BELOW_ONE: '{path}: bottles of {given} are full before one count has passed.',
      PRESET_NOT_FOUND:
        '{path}: no preset gives this chance, since the line grows unsure faster than it rises. Fill at presets further apart, or more often. Looked at: {allowed}.',
    },
  },
};

/** Words that several sheets of presets share. */
export const presetProblemWords = {
  PRESET_BELOW_ONE:
    '{path}: the preset would be {given}; what passes after the count alone is more than what is wanted.',
} as const;

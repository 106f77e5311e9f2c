/** Words that several sheets of a lane's line share. */
export const lineProblems = {
  LINE_ONE_PRESET:
    '{path}: all fills were made at one preset ({given}): they say nothing of the volume of one count.',
  LINE_NOT_RISING: '{path}: the volume does not rise with the count; are lanes or columns interchanged?',
  LINE_NO_SCATTER:
    '{path}: the fills lie on one line to the last digit; a band about such fills would promise too much.',
} as const;

export const lineNotes = {
  LINE_FEW_TRIALS:
    'Fewer than three presets or twelve fills: at least three presets with four fills each are wanted for a line.',
  LINE_BEYOND_TRIALS: 'Outside the presets that were tried: the line is trusted there, not seen.',
} as const;

/** Words that several charts share. */
export const chartProblems = {
  CHART_NO_RANGE: '{path}: the values do not vary, so that there is nothing to set limits by.',
} as const;

export const chartNotes = {
  CHART_OUTSIDE: 'Outside the limits: look for what changed before the preset is touched.',
} as const;

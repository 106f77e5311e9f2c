/** What is said of half a stop or half a bottle. */
export const wholeProblem = {
  RATE_NOT_WHOLE: '{path}: {given} is not a whole number. Accepted: {allowed}.',
} as const;

/** Words of what the samples want and of what cannot be. */
export const bottleSamplesText = {
  en: {
    SAMPLE_FEW: '{path}: measured on {given} bottles; two say how far they differ, ten say it well.',
    SAMPLE_FULL_UNDER_EMPTY:
      '{path}: a full bottle of {given} is not heavier than the empty one. Allowed: {allowed}.',
  },
} as const;

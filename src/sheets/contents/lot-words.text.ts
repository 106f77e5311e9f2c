/** Words of the verdicts on a lot, in English. */
export const lotVerdictWords = {
  accept: 'accepted',
  reject: 'rejected',
  'take more': 'take more packages',
  'not decided': 'not decided',
} as const;

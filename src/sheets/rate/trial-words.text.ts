/** Words that the sheets of short trials share. */
export const trialWords = {
  confidence: 'Confidence',
  confidenceOneSided: 'Confidence (one-sided)',
  stops: 'Stops',
  low: 'Lower limit (two-sided)',
  high: 'Upper limit (two-sided)',
} as const;

export const trialNotes = {
  STOPS_STEADY:
    'Holds for stops that come at one rate all the time. Draw the sum of stops over time first: while a line is being run in, they come thick at the beginning.',
  RUNS_FEW: 'From so few runs, and only if they are independent of each other and each began settled.',
  AVAILABILITY_NORMAL:
    'Over few stops only a rough figure: it takes the share of time running as normally distributed.',
} as const;

/** Mean delays, min, of ten runs of a bank with five tellers; several cases use them. */
export const bankDelays = [1.53, 1.66, 1.24, 2.34, 2.0, 1.69, 2.69, 2.86, 1.7, 2.6] as const;

/** Ten observations of another textbook example, in no relation to the delays. */
export const tenObservations = [1.2, 1.5, 1.68, 1.89, 0.95, 1.49, 1.58, 1.55, 0.5, 1.09] as const;

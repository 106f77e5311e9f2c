import type { Source } from '../frame.ts';

/** What one pulse is worth in a count. */
export const meterResolution: Source = {
  title: 'D. M. Comstock, Theory and application of pulse interpolation to prover systems',
  edition: 'International School of Hydrocarbon Measurement, 1993',
  place: 'abstract: at least 10 000 pulses for one part in ten thousand',
  mark: 'read',
};

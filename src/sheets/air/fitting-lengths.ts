/**
 * Length of the same pipe that loses what a fitting loses, m, for compressed air: an engineering web handbook,
 * pressure drop in compressed air fittings, metric table, read. Its source is empirical and unlabelled; its imperial
 * version has a suspected misprint at the tee run of 2 1/2 in.
 */
export const nominalSizes = ['15', '20', '25', '32', '40', '50', '65', '80', '100', '125'] as const;
export type NominalSize = (typeof nominalSizes)[number];

export type Fitting = 'longBends' | 'elbows' | 'teeRuns' | 'teeBranches';

export const fittingLengths: Readonly<Record<Fitting, readonly number[]>> = {
  longBends: [0.15, 0.2, 0.25, 0.35, 0.5, 0.6, 0.8, 1, 1.2, 1.5],
  elbows: [0.25, 0.4, 0.5, 0.65, 0.8, 1, 1.4, 1.8, 2.4, 3.2],
  teeRuns: [0.2, 0.3, 0.4, 0.5, 0.7, 0.85, 1.1, 1.3, 1.6, 2],
  teeBranches: [0.5, 0.7, 1.4, 1.8, 2.4, 2.7, 3.6, 4.6, 5.7, 7],
};

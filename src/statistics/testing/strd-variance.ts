/**
 * Set SiRstv of the NIST Statistical Reference Datasets (StRD), analysis of variance: resistance of silicon,
 * five instruments, five readings each; data and certified values read in a public transcription of SiRstv.dat.
 */
export const siRstv = {
  groups: [
    [196.3052, 196.124, 196.189, 196.2569, 196.3403],
    [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
    [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
    [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
    [196.2119, 196.1051, 196.185, 196.0052, 196.209],
  ],
  betweenSquares: 5.11462616e-2,
  betweenDof: 4,
  betweenMean: 1.27865654e-2,
  withinSquares: 2.1663656e-1,
  withinDof: 20,
  withinMean: 1.0831828e-2,
  f: 1.18046237440255,
  residualDeviation: 1.04076068334656e-1,
} as const;

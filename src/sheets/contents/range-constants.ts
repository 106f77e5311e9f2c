/**
 * Mean d2 and standard deviation d3 of the range of n normal values, in standard deviations of one.
 * Computed by Gauss-Legendre quadrature of 400 nodes each way over 18 deviations; A2, D3 and D4, which follow from them, agree with
 * printed tables for n = 2 to 5 (public transcription).
 */
export const rangeConstants = {
  '2': [1.1283792, 0.8525025],
  '3': [1.6925688, 0.888368],
  '4': [2.0587507, 0.8798082],
  '5': [2.3259289, 0.8640819],
  '6': [2.5344127, 0.8480397],
  '7': [2.7043568, 0.8332053],
  '8': [2.8472006, 0.8198315],
  '9': [2.9700263, 0.8078343],
  '10': [3.0775055, 0.7970507],
  '12': [3.2584553, 0.7784783],
  '15': [3.4718269, 0.7562114],
  '20': [3.7349501, 0.7286863],
  '25': [3.9306292, 0.7084408],
} as const;

/** Values in one subgroup. */
export type SubgroupSize = keyof typeof rangeConstants;
export const subgroupSizes = Object.keys(rangeConstants) as SubgroupSize[];

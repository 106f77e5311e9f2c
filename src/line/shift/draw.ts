/** A time that may vary from one time to the next. */
export type Draw =
  /** s, always the same */
  | number
  | { readonly kind: 'exponential'; readonly mean: number }
  | { readonly kind: 'uniform'; readonly low: number; readonly high: number }
  /**
   * s, at equal steps of probability from the least to the most; straight between them. Any distribution can be given
   * so: the quantiles of a fit, or the sorted times of a log.
   */
  | { readonly kind: 'quantiles'; readonly quantiles: readonly number[] };

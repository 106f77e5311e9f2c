/** What is known of how often something comes: so many events, which need not be whole, in so long. */
export interface EventRate {
  readonly events: number;
  readonly exposure: number;
}

/**
 * What is known of a rate once more was seen.
 *
 * Method   the rate is believed to be Gamma(a, b); n events that come by chance in T leave it Gamma(a + n, b + T), whose
 *          mean is (a + n)/(b + T): what was believed counts as a events in b
 * Source   A. Gelman and others, Bayesian Data Analysis, 3rd edition, 2.6 (memory)
 */
export const learnt = (before: EventRate, seen: EventRate): EventRate => ({
  events: before.events + seen.events,
  exposure: before.exposure + seen.exposure,
});

/**
 * Time in which a gated spray wets a bottle within one index.
 *
 * Method   t_on = min( max(tau - t_d, 0), t_max )
 * Symbols  tau    index    scalar  s
 *          t_d    dead     scalar  s  transfer, valve opening, settling of the jet
 *          t_max  timeOut  scalar  s  the spray shuts after it, to spare water during a hold
 * Returns  time, s
 * Cost     O(1)
 * Source   definition
 */
export const wettedTime = (index: number, dead: number, timeOut: number): number =>
  Math.min(Math.max(index - dead, 0), timeOut);

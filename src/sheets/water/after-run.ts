/**
 * Volume that still enters a bottle after the last pulse was counted.
 *
 * Method   V_a = q (t_d + kappa t_c + T_s/2) + V_drip
 * Symbols  q       flow           scalar  m3/s   at the moment of closing
 *          t_d     delay          scalar  s      output, pilot air, first movement
 *          t_c     closing        scalar  s      stroke
 *          kappa   closingFactor  ratio   mean relative flow over the stroke; 0.5 where it falls linearly
 *          V_drip  drip           scalar  m3
 *          T_s     scan           scalar  s      time of one scan between count and output; on average half is lost
 * Returns  volume, m3
 * Cost     O(1)
 * Source   mass balance
 */
export const afterRun = (
  flow: number,
  delay: number,
  closing: number,
  closingFactor: number,
  drip: number,
  scan: number,
): number => flow * (delay + closingFactor * closing + 0.5 * scan) + drip;

/** Mean relative flow over the stroke of a valve whose flow falls straight. */
export const linearClosing = 0.5;

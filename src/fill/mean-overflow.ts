import { normalCdf, normalDensity } from '../statistics/normal.ts';

/**
 * Mean of what runs over, of bottles that get this much more than they hold on average.
 *
 * Method   E[D+] = m Phi(m/s) + s phi(m/s)
 * Symbols  m  over  scalar  m3;  s  deviation  scalar  m3
 * Source   reference, contents, F16
 */
export const meanOverflow = (over: number, deviation: number): number =>
  deviation > 0
    ? over * normalCdf(over / deviation) + deviation * normalDensity(over / deviation)
    : Math.max(0, over);

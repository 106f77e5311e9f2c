/**
 * Time at a reference temperature that kills as much as a course of temperatures.
 *
 * Method   integral of 10^((T - T_ref)/z) dt by the trapezoid of the rate between readings; where a course
 *          crosses the least temperature that counts, the straight line between the readings is cut there
 * Symbols  t      times         [n]     s  rising
 *          T      temperatures  [n]     K
 *          T_ref  reference     scalar  K
 *          z      z             scalar  K  > 0
 *          T_min  counts        scalar  K  time below it is ignored
 * Returns  equivalent time, s
 * Cost     O(n)
 * Source   Bigelow 1921, as every lethality integral; trapezoid of the rate, not the rate of the mean
 */
export const equivalentTime = (
  times: readonly number[],
  temperatures: readonly number[],
  reference: number,
  z: number,
  counts: number,
): number => {
  const rate = (temperature: number): number => 10 ** ((temperature - reference) / z);
  // a reading that equals the least one after a conversion still counts
  const least = counts - 1e-6;
  let sum = 0;
  for (let i = 1; i < times.length; i++) {
    const [from, to] = [temperatures[i - 1]!, temperatures[i]!];
    const span = times[i]! - times[i - 1]!;
    const [low, high] = [Math.min(from, to), Math.max(from, to)];
    if (high < least) continue;
    const kept = low >= least ? 1 : (high - least) / (high - low);
    sum += 0.5 * span * kept * (rate(Math.max(low, least)) + rate(high));
  }
  return sum;
};

import type { Fit } from './fit.ts';
import { varianceOf } from './noise.ts';
import type { SetupReadings } from './readings.ts';

/**
 * The fit with what is wrong with all volumes of the trials alike, such as the calibration of their balance: however many
 * bottles are weighed, it stays.
 *
 * Method   d = A^-1 sum(slope c/variance), the move of the unknowns where every volume is off by its c; the covariance
 *          grows by d d'
 * Symbols  c  common  by reading  m3  standard uncertainty of what it shares with the others
 * Returns  the same fit where no reading shares anything
 * Cost     O(readings) and one product with the covariance
 * Source   JCGM 100:2008, F.1.2.3 and H.2: inputs that are fully correlated add up before they are squared (memory)
 */
export const withCommonError = (fit: Fit, readings: readonly SetupReadings[]): Fit => {
  const size = fit.unknowns.length;
  const push = new Float64Array(size);
  let shared = false;
  readings.forEach(({ volumes }, s) => {
    volumes.forEach((list, i) => {
      let force = 0;
      for (const { common = 0, stated } of list) force += common / varianceOf(fit.volumeNoise, stated);
      if (force === 0) return;
      shared = true;
      const slope = fit.slopes[s]!.volumes[i]!;
      for (let k = 0; k < size; k++) push[k] = push[k]! + slope[k]! * force;
    });
  });
  if (!shared) return fit;
  const { whole } = fit.covariance;
  const move = whole.map((row) => row.reduce((sum, one, k) => sum + one * push[k]!, 0));
  const grown = whole.map((row, i) => row.map((one, k) => one + move[i]! * move[k]!));
  return { ...fit, covariance: { ...fit.covariance, whole: grown } };
};

import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { flows } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Mean of a demand that repeats: the least make-up that keeps up with it.
 *
 * Method   Q_mean = sum(Q_i t_i)/sum(t_i)
 * Symbols  t  durations  [n]  s     > 0
 *          Q  demands    [n]  m3/s  >= 0
 * Returns  flow, m3/s
 * Cost     O(n)
 * Source   definition
 */
export const meanDemand = (durations: readonly number[], demands: readonly number[]): number => {
  let volume = 0;
  let time = 0;
  durations.forEach((t, i) => {
    volume += t * demands[i]!;
    time += t;
  });
  return volume / time;
};

/**
 * Volume that must stand ready so that a steady make-up carries a demand that repeats.
 *
 * Method   running deficit d = max(0, d + (Q_i - Q_m) t_i) twice over the pattern; V = max d
 * Symbols  t    durations  [n]  s     > 0, one pattern
 *          Q    demands    [n]  m3/s  >= 0
 *          Q_m  makeUp     scalar  m3/s
 * Returns  volume, m3, dead volume and switching band apart; infinity where the make-up is under the mean
 * Cost     O(n)
 * Source   cumulative curves of demand and supply
 */
export const bufferVolume = (
  durations: readonly number[],
  demands: readonly number[],
  makeUp: number,
): number => {
  // a mean that equals the make-up but for rounding still balances
  if (makeUp < meanDemand(durations, demands) * (1 - 1e-12)) return Number.POSITIVE_INFINITY;
  let deficit = 0;
  let most = 0;
  for (let round = 0; round < 2; round++) {
    for (let i = 0; i < durations.length; i++) {
      deficit = Math.max(0, deficit + (demands[i]! - makeUp) * durations[i]!);
      most = Math.max(most, deficit);
    }
  }
  return most;
};

interface BufferVolumeInputs {
  readonly durations: readonly number[];
  readonly demands: readonly number[];
  readonly makeUp: number;
}

export const bufferVolumeSheet = defineSheet({
  id: 'water/buffer-volume',
  version: 1,
  inputs: {
    durations: listField('time', 't_i', { above: 0, most: 1e7 }),
    demands: listField('volumeFlow', 'Q_i', flows),
    makeUp: numberField('volumeFlow', 'Q_m', flows),
  },
  outputs: {
    volume: numberField('volume', 'V'),
    meanDemand: numberField('volumeFlow', '\\bar Q'),
    peakDemand: numberField('volumeFlow', 'Q_{\\max}'),
  },
  formula: [
    'd_i = \\max \\left( 0,\\ d_{i-1} + (Q_i - Q_m)\\, t_i \\right), \\quad V = \\max_i d_i',
    '\\bar Q = \\frac{\\sum Q_i t_i}{\\sum t_i}',
  ],
  limits: [{ code: 'BUFFER_MARGIN', broken: (_, { volume }) => volume > 0 }],
  sources: [derived],
  check: ({ durations, demands, makeUp }) => {
    const problems = listLengths({ durations, demands });
    if (problems.length > 0) return problems;
    return Number.isFinite(bufferVolume(durations, demands, makeUp))
      ? []
      : [
          {
            code: 'BUFFER_MAKE_UP',
            path: 'makeUp',
            given: makeUp,
            allowed: `>= ${meanDemand(durations, demands)}`,
          },
        ];
  },
  compute: ({ durations, demands, makeUp }: BufferVolumeInputs) => ({
    volume: bufferVolume(durations, demands, makeUp),
    meanDemand: meanDemand(durations, demands),
    peakDemand: Math.max(...demands),
  }),
});

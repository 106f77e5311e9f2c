import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { normalFlows, normalVolumes, rates } from './bounds.ts';
import { derived } from './sources.ts';

interface UserDemandInputs {
  readonly volumes: readonly number[];
  readonly rates: readonly number[];
  readonly durations: readonly number[];
  readonly together: readonly number[];
  readonly leak: number;
}

/**
 * Average draw of users that each take a volume now and then.
 *
 * Method   q = sum V_i n_i + q_l
 * Symbols  V    volumes  [n]     m3   free air a draw
 *          n    rates    [n]     1/s  draws a second
 *          q_l  leak     scalar  m3/s
 * Returns  m3/s free air; sizes compressor and dryer
 * Cost     O(n)
 * Source   definition
 */
export const averageDemand = (volumes: readonly number[], rates: readonly number[], leak: number): number =>
  volumes.reduce((sum, volume, i) => sum + volume * rates[i]!, leak);

/**
 * Draw while everything that can move together moves together.
 *
 * Method   q = sum k_i V_i/t_i + q_l
 * Symbols  V    volumes    [n]     m3   free air a draw
 *          t    durations  [n]     s    of a draw
 *          k    together   [n]     1    how many of these draw at the same moment
 *          q_l  leak       scalar  m3/s
 * Returns  m3/s free air; sizes valves, tubes, filter and regulator, and the hose to the machine
 * Cost     O(n)
 * Source   definition
 */
export const peakDemand = (
  volumes: readonly number[],
  durations: readonly number[],
  together: readonly number[],
  leak: number,
): number => volumes.reduce((sum, volume, i) => sum + (together[i]! * volume) / durations[i]!, leak);

export const userDemandSheet = defineSheet({
  id: 'air/user-demand',
  version: 1,
  inputs: {
    volumes: listField('normalAirVolume', 'V_i', normalVolumes),
    rates: listField('startRate', 'n_i', rates),
    durations: listField('time', 't_i', { least: 1e-3, most: 1e6 }),
    together: listField('count', 'k_i', { least: 0, most: 1000 }),
    leak: numberField('normalAirFlow', 'q_l', { ...normalFlows, assumed: 0 }),
  },
  outputs: {
    averageFlow: numberField('normalAirFlow', '\\bar q'),
    peakFlow: numberField('normalAirFlow', 'q_{\\max}'),
  },
  formula: ['\\bar q = \\sum_i V_i n_i + q_l, \\quad q_{\\max} = \\sum_i k_i \\frac{V_i}{t_i} + q_l'],
  limits: [
    {
      code: 'DEMAND_PEAK_UNDER_AVERAGE',
      broken: (_, { averageFlow, peakFlow }) => peakFlow < averageFlow * (1 - 1e-9),
    },
    { code: 'DEMAND_NO_LEAK', broken: ({ leak }) => leak === 0 },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived],
  check: ({ volumes, rates: draws, durations, together }) =>
    listLengths({ volumes, rates: draws, durations, together }),
  compute: (i: UserDemandInputs) => ({
    averageFlow: averageDemand(i.volumes, i.rates, i.leak),
    peakFlow: peakDemand(i.volumes, i.durations, i.together, i.leak),
  }),
});

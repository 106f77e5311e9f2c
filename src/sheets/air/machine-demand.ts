import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { intervals, normalFlows, normalVolumes, shares } from './bounds.ts';
import { derived } from './sources.ts';
import { averageDemand, peakDemand } from './user-demand.ts';

export interface MachineDemandInputs {
  readonly perIndex: readonly number[];
  readonly strokes: readonly number[];
  readonly durations: readonly number[];
  readonly blowFlows: readonly number[];
  readonly blowTimes: readonly number[];
  readonly period: number;
  readonly leak: number;
}

export interface MachineDemand {
  readonly averageFlow: number;
  readonly peakFlow: number;
  readonly leakFlow: number;
}

/**
 * Air that a machine of cylinders and jets draws on average, and while all of them draw at one moment.
 *
 * Method   q_l = x (sum V_i + sum q_j t_j)/T;  q = (sum V_i + sum q_j t_j)/T + q_l;  q_max = sum v_i/tau_i + sum q_j + q_l
 * Symbols  V    perIndex   [n]     m3    free air of a cylinder in one index
 *          v    strokes    [n]     m3    free air of its larger single draw
 *          tau  durations  [n]     s     of that stroke, > 0
 *          q    blowFlows  [m]     m3/s  of a jet while it blows
 *          t    blowTimes  [m]     s     that it blows in one index
 *          T    period     scalar  s     of the index, > 0
 *          x    leak       scalar  1     leakage as a share of the demand
 * Returns  m3/s free air
 * Assumes  every cylinder makes its larger draw and every jet blows at the same moment: the highest the peak can be
 * Cost     O(n + m)
 * Source   definition, `averageDemand`, `peakDemand`
 */
export const machineDemand = (i: MachineDemandInputs): MachineDemand => {
  const draws = [...i.perIndex, ...i.blowFlows.map((flow, j) => flow * i.blowTimes[j]!)];
  const everyIndex = draws.map(() => 1 / i.period);
  const drawn = averageDemand(draws, everyIndex, 0);
  const leakFlow = i.leak * drawn;
  const once = i.strokes.map(() => 1);
  const steady = i.blowFlows.reduce((sum, flow) => sum + flow, leakFlow);
  return {
    averageFlow: drawn + leakFlow,
    peakFlow: peakDemand(i.strokes, i.durations, once, steady),
    leakFlow,
  };
};

export const machineDemandSheet = defineSheet({
  id: 'air/machine-demand',
  version: 1,
  inputs: {
    perIndex: listField('normalAirVolume', 'V_i', { ...normalVolumes, fewest: 0 }),
    strokes: listField('normalAirVolume', 'v_i', { ...normalVolumes, fewest: 0 }),
    durations: listField('time', '\\tau_i', { least: 1e-3, most: 1e6, fewest: 0 }),
    blowFlows: listField('normalAirFlow', 'q_j', { ...normalFlows, fewest: 0 }),
    blowTimes: listField('time', 't_j', { least: 0, most: 1e6, fewest: 0 }),
    period: numberField('time', 'T', intervals),
    leak: numberField('ratio', 'x', { ...shares, assumed: 0.1 }),
  },
  outputs: {
    averageFlow: numberField('normalAirFlow', '\\bar q'),
    peakFlow: numberField('normalAirFlow', 'q_{\\max}'),
    leakFlow: numberField('normalAirFlow', 'q_l'),
  },
  formula: [
    'q_l = x \\frac{\\sum_i V_i + \\sum_j q_j t_j}{T}, \\quad \\bar q = \\frac{\\sum_i V_i + \\sum_j q_j t_j}{T} + q_l',
    'q_{\\max} = \\sum_i \\frac{v_i}{\\tau_i} + \\sum_j q_j + q_l',
  ],
  limits: [
    {
      code: 'DEMAND_PEAK_UNDER_AVERAGE',
      broken: (_, { averageFlow, peakFlow }) => peakFlow < averageFlow * (1 - 1e-9),
    },
    {
      code: 'BLOW_OVER_INDEX',
      broken: ({ blowTimes, period }) => blowTimes.some((time) => time > period),
    },
    { code: 'DEMAND_NO_LEAK', broken: ({ leak }) => leak === 0 },
    { code: 'DEMAND_LEAK_SHARE', broken: ({ leak }) => leak > 0 },
    { code: 'DEMAND_ALL_TOGETHER', broken: () => true },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [
    derived,
    {
      title: 'Air compressor leak test method, interview notes of a mechanical engineer',
      edition: '2014',
      place: 'leakage of well-kept and neglected systems, public article',
      mark: 'read',
    },
  ],
  check: ({ perIndex, strokes, durations, blowFlows, blowTimes }) => [
    ...listLengths({ perIndex, strokes, durations }),
    ...listLengths({ blowFlows, blowTimes }),
  ],
  compute: (i: MachineDemandInputs) => machineDemand(i),
});

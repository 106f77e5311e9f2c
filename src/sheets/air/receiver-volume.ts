import { choiceField, listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absoluteProblems } from './absolute-problems.ts';
import { gaugePressures, intervals, normalFlows, roomTemperatures, standardAtmospheres } from './bounds.ts';
import { normalPressure, normalTemperature } from './dry-air.ts';
import { bandProblems } from './receiver-band.ts';
import { derived } from './sources.ts';

export type Pattern = 'once' | 'repeats';

/**
 * Air that a receiver must give while demand outruns the compressor.
 *
 * Method   running deficit: d[i] = max(0, d[i-1] + (q[i] - s) dt);  max d; a pattern that repeats is run twice
 * Symbols  q   demands   [n]     m3/s  normal air  >= 0
 *          dt  interval  scalar  s
 *          s   supply    scalar  m3/s  normal air
 * Returns  m3 normal air
 * Cost     O(n)
 * Source   mass balance
 */
export const worstDeficit = (
  demands: readonly number[],
  interval: number,
  supply: number,
  pattern: Pattern,
): number => {
  let deficit = 0;
  let most = 0;
  for (let round = pattern === 'once' ? 1 : 0; round < 2; round++) {
    for (const demand of demands) {
      deficit = Math.max(0, deficit + (demand - supply) * interval);
      most = Math.max(most, deficit);
    }
  }
  return most;
};

/**
 * Volume of a receiver that carries a known demand profile while demand outruns the compressor.
 *
 * Method   V = d p_n T/((p_1 - p_2) T_n),  d by `worstDeficit`
 * Symbols  d          deficit      scalar  m3  normal air
 *          p_1 - p_2  band         scalar  Pa  > 0
 *          T          temperature  scalar  K   of the air in the receiver
 * Returns  m3 water volume
 * Assumes  isothermal ideal gas; fast emptying cools the air and needs more
 * Cost     O(1)
 * Source   mass balance
 */
export const receiverVolume = (deficit: number, band: number, temperature: number): number =>
  (deficit * normalPressure * temperature) / (band * normalTemperature);

interface ReceiverVolumeInputs {
  readonly demands: readonly number[];
  readonly interval: number;
  readonly supply: number;
  readonly pattern: Pattern;
  readonly high: number;
  readonly low: number;
  readonly atmosphere: number;
  readonly temperature: number;
}

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

export const receiverVolumeSheet = defineSheet({
  id: 'air/receiver-volume',
  version: 1,
  inputs: {
    demands: listField('normalAirFlow', 'q_i', normalFlows),
    interval: numberField('time', '\\Delta t', intervals),
    supply: numberField('normalAirFlow', 's', normalFlows),
    pattern: choiceField<Pattern>('\\text{pattern}', ['repeats', 'once'], 'repeats'),
    high: numberField('gaugePressure', 'p_1', gaugePressures),
    low: numberField('gaugePressure', 'p_2', gaugePressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T', roomTemperatures),
  },
  outputs: {
    volume: numberField('volume', 'V'),
    deficit: numberField('normalAirVolume', 'd'),
    meanDemand: numberField('normalAirFlow', '\\bar q'),
    peakDemand: numberField('normalAirFlow', 'q_{\\max}'),
  },
  formula: [
    'd_i = \\max \\left( 0,\\ d_{i-1} + (q_i - s)\\, \\Delta t \\right), \\quad d = \\max_i d_i',
    'V = \\frac{d\\, p_n}{p_1 - p_2} \\frac{T}{T_n}',
  ],
  limits: [
    { code: 'RECEIVER_NOT_NEEDED', broken: (_, { deficit }) => deficit === 0 },
    { code: 'RECEIVER_DROP_TO_MACHINE', broken: () => true },
    { code: 'RECEIVER_RULES', broken: () => true },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived],
  check: ({ demands, supply, pattern, high, low, atmosphere }) => {
    const problems = absoluteProblems({ high, low }, atmosphere);
    if (problems.length > 0) return problems;
    return [
      ...bandProblems(high, low),
      // a mean that equals the delivery but for rounding still balances
      ...(pattern === 'repeats' && supply < mean(demands) * (1 - 1e-12)
        ? [{ code: 'RECEIVER_MEAN_OVER', path: 'supply', given: supply, allowed: `>= ${mean(demands)}` }]
        : []),
    ];
  },
  compute: (i: ReceiverVolumeInputs) => {
    const deficit = worstDeficit(i.demands, i.interval, i.supply, i.pattern);
    return {
      volume: receiverVolume(deficit, i.high - i.low, i.temperature),
      deficit,
      meanDemand: mean(i.demands),
      peakDemand: i.demands.reduce((a, b) => Math.max(a, b), 0),
    };
  },
});

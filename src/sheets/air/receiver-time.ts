import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absoluteProblems } from './absolute-problems.ts';
import { gaugePressures, normalFlows, roomTemperatures, standardAtmospheres, vessels } from './bounds.ts';
import { normalPressure, normalTemperature } from './dry-air.ts';
import { derived } from './sources.ts';

/**
 * Time in which a receiver falls from one pressure to another.
 *
 * Method   t = V (p_1 - p_2) T_n/((q - s) p_n T); 0 where p_2 is not below p_1
 * Symbols  V  volume       scalar  m3
 *          p_1 - p_2  band scalar  Pa
 *          q  demand       scalar  m3/s  normal air, over s
 *          s  supply       scalar  m3/s  normal air
 *          T  temperature  scalar  K     of the air in the receiver
 * Returns  s; infinity where the supply keeps up
 * Assumes  isothermal ideal gas; fast emptying cools the air and is shorter
 * Cost     O(1)
 * Source   mass balance; vendor articles print it with T = T_n
 */
export const receiverTime = (
  volume: number,
  band: number,
  demand: number,
  supply: number,
  temperature: number,
): number => {
  if (band <= 0) return 0;
  if (supply >= demand) return Number.POSITIVE_INFINITY;
  return (volume * band * normalTemperature) / ((demand - supply) * normalPressure * temperature);
};

interface ReceiverTimeInputs {
  readonly volume: number;
  readonly high: number;
  readonly low: number;
  readonly demand: number;
  readonly supply: number;
  readonly atmosphere: number;
  readonly temperature: number;
}

export const receiverTimeSheet = defineSheet({
  id: 'air/receiver-time',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V', vessels),
    high: numberField('gaugePressure', 'p_1', gaugePressures),
    low: numberField('gaugePressure', 'p_2', gaugePressures),
    demand: numberField('normalAirFlow', 'q', normalFlows),
    supply: numberField('normalAirFlow', 's', { ...normalFlows, assumed: 0 }),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T', roomTemperatures),
  },
  outputs: { time: numberField('time', 't') },
  formula: ['t = \\frac{V (p_1 - p_2)}{(q - s)\\, p_n} \\frac{T_n}{T}'],
  limits: [
    { code: 'RECEIVER_DROP_TO_MACHINE', broken: () => true },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived],
  check: ({ high, low, demand, supply, atmosphere }) => {
    const problems = absoluteProblems({ high, low }, atmosphere);
    if (problems.length > 0) return problems;
    return [
      ...(high < low ? [{ code: 'RECEIVER_BAND', path: 'high', given: high, allowed: `> ${low}` }] : []),
      ...(high > low && supply >= demand
        ? [{ code: 'RECEIVER_NEVER_FALLS', path: 'demand', given: demand, allowed: `> ${supply}` }]
        : []),
    ];
  },
  compute: (i: ReceiverTimeInputs) => ({
    time: receiverTime(i.volume, i.high - i.low, i.demand, i.supply, i.temperature),
  }),
});

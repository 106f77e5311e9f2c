import type { Problem } from '../../quantity/problem.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absoluteProblems } from './absolute-problems.ts';
import { gaugePressures, normalFlows, roomTemperatures, standardAtmospheres, times } from './bounds.ts';
import { normalPressure, normalTemperature } from './dry-air.ts';
import { derived } from './sources.ts';

/**
 * Volume of a receiver that gives air between two pressures for a time.
 *
 * Method   V = t (q - s) p_n T/((p_1 - p_2) T_n); 0 where the supply keeps up
 * Symbols  t    time         scalar  s
 *          q    demand       scalar  m3/s  normal air
 *          s    supply       scalar  m3/s  normal air
 *          p_1 - p_2  band   scalar  Pa    > 0
 *          T    temperature  scalar  K     of the air in the receiver
 * Returns  m3 water volume
 * Assumes  isothermal ideal gas; fast emptying cools the air and needs more
 * Cost     O(1)
 * Source   mass balance; vendor articles print it with T = T_n
 */
export const receiverBand = (
  time: number,
  demand: number,
  supply: number,
  band: number,
  temperature: number,
): number =>
  (time * Math.max(0, demand - supply) * normalPressure * temperature) / (band * normalTemperature);

/** High that is not above low. */
export const bandProblems = (high: number, low: number): Problem[] =>
  high > low ? [] : [{ code: 'RECEIVER_BAND', path: 'high', given: high, allowed: `> ${low}` }];

interface ReceiverBandInputs {
  readonly time: number;
  readonly demand: number;
  readonly supply: number;
  readonly high: number;
  readonly low: number;
  readonly atmosphere: number;
  readonly temperature: number;
}

export const receiverBandSheet = defineSheet({
  id: 'air/receiver-band',
  version: 1,
  inputs: {
    time: numberField('time', 't', times),
    demand: numberField('normalAirFlow', 'q', normalFlows),
    supply: numberField('normalAirFlow', 's', { ...normalFlows, assumed: 0 }),
    high: numberField('gaugePressure', 'p_1', gaugePressures),
    low: numberField('gaugePressure', 'p_2', gaugePressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T', roomTemperatures),
  },
  outputs: { volume: numberField('volume', 'V') },
  formula: ['V = \\frac{t (q - s)\\, p_n}{p_1 - p_2} \\frac{T}{T_n}'],
  limits: [
    { code: 'RECEIVER_NOT_NEEDED', broken: ({ demand, supply }) => supply >= demand },
    { code: 'RECEIVER_DROP_TO_MACHINE', broken: () => true },
    { code: 'RECEIVER_RULES', broken: () => true },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived],
  check: ({ high, low, atmosphere }) => {
    const problems = absoluteProblems({ high, low }, atmosphere);
    return problems.length > 0 ? problems : bandProblems(high, low);
  },
  compute: (i: ReceiverBandInputs) => ({
    volume: receiverBand(i.time, i.demand, i.supply, i.high - i.low, i.temperature),
  }),
});

import { brentRoot } from '../brent-root.ts';
import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { flows, waterTemperatures } from './bounds.ts';
import { waterEnthalpy, waterHeat, waterVolume } from './if97.ts';
import { heatBalance, if97 } from './sources.ts';

const open = 101_325;

/**
 * Temperature of streams that have mixed.
 *
 * Method   sum m h(T) = sum m h(T_i),  m = rho(T_i) Q_i
 * Symbols  Q  flows         [n]  m3/s  >= 0, not all 0
 *          T  temperatures  [n]  K     273.15 to 373.15
 * Returns  K
 * Assumes  water; nothing is lost on the way
 * Cost     O(n) and a root
 * Source   heat balance; IAPWS R7-97(2012), region 1
 */
export const mixedTemperature = (flowsIn: readonly number[], temperatures: readonly number[]): number => {
  let mass = 0;
  let heat = 0;
  for (let i = 0; i < flowsIn.length; i++) {
    const part = flowsIn[i]! / waterVolume(open, temperatures[i]!);
    mass += part;
    heat += part * waterEnthalpy(open, temperatures[i]!);
  }
  const wanted = heat / mass;
  const coldest = temperatures.reduce((a, b) => Math.min(a, b));
  const hottest = temperatures.reduce((a, b) => Math.max(a, b));
  const root = brentRoot((T) => waterEnthalpy(open, T) - wanted, coldest, hottest, 1e-9);
  // one temperature in all streams leaves nothing to search between
  return Number.isNaN(root) ? Math.min(hottest, Math.max(coldest, temperatures[0]!)) : root;
};

/**
 * Cold water that brings a hot stream down to a limit.
 *
 * Method   Q_c = m (h(T) - h(T_l))/(h(T_l) - h(T_c))/rho(T_c)
 * Symbols  m    mass   scalar  kg/s  of the hot stream
 *          T    hot    scalar  K
 *          T_l  limit  scalar  K
 *          T_c  cold   scalar  K     < T_l
 * Returns  m3/s; 0 where the stream is under the limit
 * Cost     O(1)
 * Source   heat balance
 */
export const temperingFlow = (mass: number, hot: number, limit: number, cold: number): number =>
  hot <= limit ? 0 : ((mass * waterHeat(limit, hot)) / waterHeat(cold, limit)) * waterVolume(open, cold);

interface DrainMixInputs {
  readonly flows: readonly number[];
  readonly temperatures: readonly number[];
  readonly limit: number;
  readonly cold: number;
}

export const drainMixSheet = defineSheet({
  id: 'heat/drain-mix',
  version: 1,
  inputs: {
    flows: listField('volumeFlow', 'Q_i', flows),
    temperatures: listField('temperature', 'T_i', waterTemperatures),
    limit: numberField('temperature', 'T_l', { ...waterTemperatures, assumed: 333.15 }),
    cold: numberField('temperature', 'T_c', { ...waterTemperatures, assumed: 288.15 }),
  },
  outputs: {
    temperature: numberField('temperature', 'T'),
    flow: numberField('volumeFlow', 'Q'),
    tempering: numberField('volumeFlow', 'Q_c'),
  },
  formula: [
    'm_i = \\rho(T_i) Q_i, \\quad \\sum m_i\\, h(T) = \\sum m_i h(T_i), \\quad Q = \\sum Q_i',
    'Q_c = \\frac{\\sum m_i}{\\rho(T_c)} \\frac{h(T) - h(T_l)}{h(T_l) - h(T_c)}',
  ],
  limits: [
    { code: 'DRAIN_TOO_HOT', broken: ({ limit }, { temperature }) => temperature > limit + 1e-6 },
    { code: 'DRAIN_LIMIT_LOCAL', broken: () => true },
    { code: 'DRAIN_NO_PH', broken: () => true },
  ],
  sources: [heatBalance, if97],
  check: ({ flows: given, temperatures, limit, cold }) => [
    ...listLengths({ flows: given, temperatures }),
    ...(given.reduce((a, b) => a + b, 0) < 1e-12
      ? [{ code: 'DRAIN_NO_FLOW', path: 'flows', given: 0, allowed: '> 0' }]
      : []),
    ...(cold >= limit - 0.1 ? [{ code: 'DRAIN_NOT_COLDER', path: 'cold', given: cold }] : []),
  ],
  compute: (i: DrainMixInputs) => {
    const temperature = mixedTemperature(i.flows, i.temperatures);
    const mass = i.flows.reduce((sum, flow, k) => sum + flow / waterVolume(open, i.temperatures[k]!), 0);
    return {
      temperature,
      flow: i.flows.reduce((a, b) => a + b, 0),
      tempering: temperingFlow(mass, temperature, i.limit, i.cold),
    };
  },
});

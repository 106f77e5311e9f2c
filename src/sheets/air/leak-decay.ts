import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absoluteProblems } from './absolute-problems.ts';
import { gaugePressures, roomTemperatures, standardAtmospheres, vessels } from './bounds.ts';
import { normalPressure, normalTemperature } from './dry-air.ts';
import { derived } from './sources.ts';

/**
 * Mean leak of a closed volume over a fall of its pressure.
 *
 * Method   q = V/p_n (p_1/T_1 - p_2/T_2) T_n/t
 * Symbols  V  volume        scalar  m3
 *          p  pressures     scalar  Pa absolute
 *          T  temperatures  scalar  K
 *          t  time          scalar  s
 * Returns  m3/s free air at 100 kPa, 293.15 K
 * Assumes  still air: 2 K of cooling in a fall from 7 to 6 bar changes it by 4 %
 * Cost     O(1)
 * Source   ideal gas law
 */
export const meanLeak = (
  volume: number,
  before: number,
  after: number,
  temperatureBefore: number,
  temperatureAfter: number,
  time: number,
): number =>
  ((volume / normalPressure) * (before / temperatureBefore - after / temperatureAfter) * normalTemperature) /
  time;

/**
 * Leak at the first pressure over the mean leak of a fall, holes choked.
 *
 * Method   F = p_1 ln(p_1/p_2)/(p_1 - p_2)
 * Symbols  p_1 before, p_2 after  scalar  Pa absolute  p_1 > p_2
 * Returns  ratio, over 1
 * Cost     O(1)
 * Source   a choked leak is in proportion to the absolute pressure: the fall is exponential
 */
export const leakFactor = (before: number, after: number): number => {
  const x = (before - after) / before;
  return x < 1e-9 ? 1 + 0.5 * x : -Math.log1p(-x) / x;
};

interface LeakDecayInputs {
  readonly volume: number;
  readonly before: number;
  readonly after: number;
  readonly atmosphere: number;
  readonly temperatureBefore: number;
  readonly temperatureAfter: number;
  readonly time: number;
}

export const leakDecaySheet = defineSheet({
  id: 'air/leak-decay',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V', vessels),
    before: numberField('gaugePressure', 'p_1', gaugePressures),
    after: numberField('gaugePressure', 'p_2', gaugePressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperatureBefore: numberField('temperature', 'T_1', roomTemperatures),
    temperatureAfter: numberField('temperature', 'T_2', roomTemperatures),
    time: numberField('time', 't', { least: 1e-3, most: 1e8 }),
  },
  outputs: {
    meanLeak: numberField('normalAirFlow', '\\bar q'),
    factor: numberField('ratio', 'F'),
    leakBefore: numberField('normalAirFlow', 'q_1'),
    byRule: numberField('normalAirFlow', 'q_{1.25}'),
  },
  formula: [
    '\\bar q = \\frac{V}{p_n} \\left( \\frac{p_1}{T_1} - \\frac{p_2}{T_2} \\right) \\frac{T_n}{t}',
    'F = \\frac{p_1 \\ln (p_1/p_2)}{p_1 - p_2}, \\quad q_1 = F \\bar q, \\quad q_{1.25} = 1.25\\, \\bar q',
  ],
  limits: [
    { code: 'LEAK_GAINED', broken: (_, { meanLeak: leak }) => leak < 0 },
    {
      code: 'LEAK_TEMPERATURE',
      broken: ({ before, after, atmosphere }) => before - after < 0.1 * (before + atmosphere),
    },
    {
      code: 'LEAK_RULE',
      broken: () => true,
      parts: (_, { factor }) => ({ factor: factor.toFixed(3) }),
    },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [
    derived,
    { title: 'gauge quickly spots leakage, trade magazine', place: 'L = dP V/(PA t)', mark: 'read' },
  ],
  check: ({ before, after, atmosphere }) => {
    const problems = absoluteProblems({ before, after }, atmosphere);
    if (problems.length > 0) return problems;
    return after < before
      ? []
      : [{ code: 'LEAK_NO_FALL', path: 'after', given: after, allowed: `< ${before}` }];
  },
  compute: (i: LeakDecayInputs) => {
    const [p1, p2] = [i.before + i.atmosphere, i.after + i.atmosphere];
    const mean = meanLeak(i.volume, p1, p2, i.temperatureBefore, i.temperatureAfter, i.time);
    const factor = leakFactor(p1, p2);
    return { meanLeak: mean, factor, leakBefore: factor * mean, byRule: 1.25 * mean };
  },
});

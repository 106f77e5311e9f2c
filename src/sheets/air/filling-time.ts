import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absoluteProblems } from './absolute-problems.ts';
import {
  conductances,
  criticalRatios,
  gaugePressures,
  roomTemperatures,
  standardAtmospheres,
  vessels,
} from './bounds.ts';
import { normalPressure, normalTemperature } from './dry-air.ts';
import { iso6358, twoSolutions } from './sources.ts';

/** Ratio of specific heats: a fast change is up to this much faster than a slow one. */
export const adiabaticIndex = 1.4;

/**
 * Time in which a volume is filled through a restriction.
 *
 * Method   choked while p < b p_s:  V (b p_s - p_i)/(C p_s p_n);  then
 *          V (1 - b)/(C p_n) (asin((p_f/p_s - b)/(1 - b)) - asin(max(0, (p_i/p_s - b)/(1 - b))));  times sqrt(T_n/T)
 * Symbols  V    volume         scalar  m3
 *          C    conductance    scalar  m3/(s Pa)
 *          b    criticalRatio  scalar  1
 *          p_i  start          scalar  Pa absolute
 *          p_f  end            scalar  Pa absolute  p_i <= p_f <= p_s
 *          p_s  supply         scalar  Pa absolute
 *          T    temperature    scalar  K
 * Returns  s, isothermal: the longest; adiabatic it is 1.4 times shorter. Finite also to full equality
 * Cost     O(1)
 * Source   ISO 6358 and the ideal gas law, integrated
 */
export const fillTime = (
  volume: number,
  conductance: number,
  criticalRatio: number,
  start: number,
  end: number,
  supply: number,
  temperature: number,
): number => {
  const scale = (volume / (conductance * normalPressure)) * Math.sqrt(normalTemperature / temperature);
  const b = criticalRatio;
  const angle = (p: number): number => Math.asin(Math.min(1, Math.max(0, (p / supply - b) / (1 - b))));
  const choked = Math.max(0, Math.min(end / supply, b) - start / supply);
  return scale * (choked + (1 - b) * (angle(end) - angle(start)));
};

interface FillingTimeInputs {
  readonly volume: number;
  readonly conductance: number;
  readonly criticalRatio: number;
  readonly start: number;
  readonly end: number;
  readonly supply: number;
  readonly atmosphere: number;
  readonly temperature: number;
}

export const fillingTimeSheet = defineSheet({
  id: 'air/filling-time',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V', vessels),
    conductance: numberField('sonicConductance', 'C', conductances),
    criticalRatio: numberField('ratio', 'b', criticalRatios),
    start: numberField('gaugePressure', 'p_i', { ...gaugePressures, assumed: 0 }),
    end: numberField('gaugePressure', 'p_f', gaugePressures),
    supply: numberField('gaugePressure', 'p_s', gaugePressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T', roomTemperatures),
  },
  outputs: {
    longest: numberField('time', 't'),
    shortest: numberField('time', 't_a'),
  },
  formula: [
    't = \\frac{V}{C p_n} \\sqrt{\\frac{T_n}{T}} \\left( \\frac{b p_s - p_i}{p_s} + (1 - b) \\left( \\arcsin \\frac{p_f/p_s - b}{1 - b} - \\arcsin \\max \\left( 0, \\frac{p_i/p_s - b}{1 - b} \\right) \\right) \\right)',
    't_a = \\frac{t}{1.4}',
  ],
  limits: [
    { code: 'FILL_BETWEEN', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [iso6358, twoSolutions],
  check: ({ start, end, supply, atmosphere }) => {
    const problems = absoluteProblems({ start, end, supply }, atmosphere);
    if (problems.length > 0) return problems;
    return [
      ...(end > supply
        ? [{ code: 'FILL_OVER_SUPPLY', path: 'end', given: end, allowed: `<= ${supply}` }]
        : []),
      ...(start > end ? [{ code: 'FILL_FALLS', path: 'start', given: start, allowed: `<= ${end}` }] : []),
    ];
  },
  compute: (i: FillingTimeInputs) => {
    const longest = fillTime(
      i.volume,
      i.conductance,
      i.criticalRatio,
      i.start + i.atmosphere,
      i.end + i.atmosphere,
      i.supply + i.atmosphere,
      i.temperature,
    );
    return { longest, shortest: longest / adiabaticIndex };
  },
});

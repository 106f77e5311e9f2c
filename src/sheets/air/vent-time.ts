import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absoluteProblems } from './absolute-problems.ts';
import {
  conductances,
  criticalRatios,
  gaugePressures,
  roomTemperatures,
  standardAtmospheres,
  supplyPressures,
  vessels,
} from './bounds.ts';
import { normalPressure, normalTemperature } from './dry-air.ts';
import { adiabaticIndex } from './filling-time.ts';
import { iso6358, twoSolutions } from './sources.ts';

/**
 * Integral of dr/(r psi(r)) from the critical ratio, with psi of ISO 6358.
 *
 * Method   r = b + (1 - b) sin a gives (1 - b) da/(b + (1 - b) sin a); t = tan(a/2), c = 1 - b:
 *          2 c/sqrt(c^2 - b^2) artanh(t sqrt(c^2 - b^2)/(b + c t)), arctan where c < b
 * Symbols  r  ratio          scalar  1  b to 1
 *          b  criticalRatio  scalar  1  > 0
 * Returns  number, finite also at r = 1
 * Cost     O(1)
 * Source   derived
 */
export const ventIntegral = (ratio: number, criticalRatio: number): number => {
  const b = criticalRatio;
  const c = 1 - b;
  const sine = Math.min(1, Math.max(0, (ratio - b) / c));
  // tan(a/2) = sin a/(1 + cos a)
  const t = sine / (1 + Math.sqrt((1 - sine) * (1 + sine)));
  const square = c * c - b * b;
  const root = Math.sqrt(Math.abs(square));
  const argument = t / (b + c * t);
  if (root < 1e-9) return 2 * c * argument;
  return ((2 * c) / root) * (square > 0 ? Math.atanh(root * argument) : Math.atan(root * argument));
};

/**
 * Time in which a volume is vented through a restriction.
 *
 * Method   choked while p > p_a/b:  V/(C p_n) ln(p_i b/p_a);  then V/(C p_n) times `ventIntegral` between the ratios
 *          p_a/p;  times sqrt(T_n/T)
 * Symbols  V    volume         scalar  m3
 *          C    conductance    scalar  m3/(s Pa)
 *          b    criticalRatio  scalar  1
 *          p_i  start          scalar  Pa absolute
 *          p_f  end            scalar  Pa absolute  p_a <= p_f <= p_i
 *          p_a  atmosphere     scalar  Pa absolute
 *          T    temperature    scalar  K
 * Returns  s, isothermal: the longest; finite also to the atmosphere
 * Cost     O(1)
 * Source   ISO 6358 and the ideal gas law, integrated
 */
export const ventTime = (
  volume: number,
  conductance: number,
  criticalRatio: number,
  start: number,
  end: number,
  atmosphere: number,
  temperature: number,
): number => {
  const scale = (volume / (conductance * normalPressure)) * Math.sqrt(normalTemperature / temperature);
  const edge = atmosphere / criticalRatio;
  const choked = start > edge ? Math.log(start / Math.max(end, edge)) : 0;
  const slow =
    end < edge
      ? ventIntegral(atmosphere / end, criticalRatio) -
        ventIntegral(atmosphere / Math.min(start, edge), criticalRatio)
      : 0;
  return scale * (choked + slow);
};

interface VentTimeInputs {
  readonly volume: number;
  readonly conductance: number;
  readonly criticalRatio: number;
  readonly start: number;
  readonly end: number;
  readonly atmosphere: number;
  readonly temperature: number;
}

export const ventTimeSheet = defineSheet({
  id: 'air/vent-time',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V', vessels),
    conductance: numberField('sonicConductance', 'C', conductances),
    criticalRatio: numberField('ratio', 'b', criticalRatios),
    start: numberField('gaugePressure', 'p_i', supplyPressures),
    end: numberField('gaugePressure', 'p_f', { ...gaugePressures, least: 0 }),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T', roomTemperatures),
  },
  outputs: {
    longest: numberField('time', 't'),
    shortest: numberField('time', 't_a'),
  },
  formula: [
    't = \\frac{V}{C p_n} \\sqrt{\\frac{T_n}{T}} \\left( \\ln \\frac{p_i b}{p_a} + \\int_b^{p_a/p_f} \\frac{dr}{r \\sqrt{1 - \\left( \\frac{r - b}{1 - b} \\right)^2}} \\right), \\quad t_a = \\frac{t}{1.4}',
  ],
  limits: [
    { code: 'VENT_NOT_PROOF', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [iso6358, twoSolutions],
  check: ({ start, end, atmosphere }) => [
    ...absoluteProblems({ start, end }, atmosphere),
    ...(end > start ? [{ code: 'VENT_RISES', path: 'end', given: end, allowed: `<= ${start}` }] : []),
  ],
  compute: (i: VentTimeInputs) => {
    const longest = ventTime(
      i.volume,
      i.conductance,
      i.criticalRatio,
      i.start + i.atmosphere,
      i.end + i.atmosphere,
      i.atmosphere,
      i.temperature,
    );
    return { longest, shortest: longest / adiabaticIndex };
  },
});

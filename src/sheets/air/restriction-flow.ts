import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absoluteProblems } from './absolute-problems.ts';
import {
  conductances,
  criticalRatios,
  gaugePressures,
  roomTemperatures,
  standardAtmospheres,
} from './bounds.ts';
import { normalTemperature, referenceDensity } from './dry-air.ts';
import type { Choked } from './nozzle-discharge.ts';
import { iso6358 } from './sources.ts';

/**
 * Share of the choked flow that a restriction passes.
 *
 * Method   1 for r <= b;  sqrt(1 - ((r - b)/(1 - b))^2) for b < r < 1;  0 at r = 1
 * Symbols  r  ratio          scalar  1  pressure after over pressure before, absolute
 *          b  criticalRatio  scalar  1
 * Returns  ratio; its slope is infinite at r = 1
 * Cost     O(1)
 * Source   ISO 6358, 1989 form; the 2013 edition has an index of 0.5 here that may be another (memory)
 */
export const flowShare = (ratio: number, criticalRatio: number): number => {
  if (ratio <= criticalRatio) return 1;
  if (ratio >= 1) return 0;
  const x = (ratio - criticalRatio) / (1 - criticalRatio);
  return Math.sqrt((1 - x) * (1 + x));
};

/**
 * Free air that a pneumatic component passes.
 *
 * Method   q = C p_1 sqrt(T_0/T) psi(p_2/p_1)
 * Symbols  C    conductance    scalar  m3/(s Pa)
 *          b    criticalRatio  scalar  1
 *          p_1  upstream       scalar  Pa absolute
 *          p_2  downstream     scalar  Pa absolute  over p_1 the flow turns round
 *          T    temperature    scalar  K            upstream
 * Returns  m3/s at 100 kPa, 293.15 K; negative where it flows back
 * Cost     O(1)
 * Source   ISO 6358, `flowShare`
 */
export const restrictionFlow = (
  conductance: number,
  criticalRatio: number,
  upstream: number,
  downstream: number,
  temperature: number,
): number => {
  const high = Math.max(upstream, downstream);
  const low = Math.min(upstream, downstream);
  const flow =
    conductance * high * Math.sqrt(normalTemperature / temperature) * flowShare(low / high, criticalRatio);
  return downstream > upstream ? -flow : flow;
};

interface RestrictionFlowInputs {
  readonly conductance: number;
  readonly criticalRatio: number;
  readonly upstream: number;
  readonly downstream: number;
  readonly atmosphere: number;
  readonly temperature: number;
}

export const restrictionFlowSheet = defineSheet({
  id: 'air/restriction-flow',
  version: 1,
  inputs: {
    conductance: numberField('sonicConductance', 'C', conductances),
    criticalRatio: numberField('ratio', 'b', criticalRatios),
    upstream: numberField('gaugePressure', 'p_1', gaugePressures),
    downstream: numberField('gaugePressure', 'p_2', gaugePressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T_1', roomTemperatures),
  },
  outputs: {
    flow: numberField('normalAirFlow', 'q'),
    chokedFlow: numberField('normalAirFlow', 'q^*'),
    pressureRatio: numberField('ratio', 'r'),
    massFlow: numberField('massFlow', '\\dot m'),
    choked: choiceField<Choked>('\\text{choked}', ['choked', 'not choked']),
  },
  formula: [
    'q = C p_1 \\sqrt{\\frac{T_0}{T_1}} \\quad (r \\le b), \\quad r = \\frac{p_2 + p_a}{p_1 + p_a}',
    'q = C p_1 \\sqrt{\\frac{T_0}{T_1}} \\sqrt{1 - \\left( \\frac{r - b}{1 - b} \\right)^2} \\quad (b < r < 1), \\quad \\dot m = \\rho_0 q',
  ],
  limits: [
    { code: 'RESTRICTION_BACKWARDS', broken: (_, { flow }) => flow < 0 },
    { code: 'RESTRICTION_NOZZLE', broken: ({ criticalRatio }) => criticalRatio > 0.5 },
    { code: 'RESTRICTION_DENSITY', broken: () => true },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [iso6358],
  check: ({ upstream, downstream, atmosphere }) => absoluteProblems({ upstream, downstream }, atmosphere),
  compute: (i: RestrictionFlowInputs) => {
    const [p1, p2] = [i.upstream + i.atmosphere, i.downstream + i.atmosphere];
    const flow = restrictionFlow(i.conductance, i.criticalRatio, p1, p2, i.temperature);
    const pressureRatio = Math.min(p1, p2) / Math.max(p1, p2);
    return {
      flow,
      chokedFlow: restrictionFlow(i.conductance, i.criticalRatio, Math.max(p1, p2), 0, i.temperature),
      pressureRatio,
      massFlow: referenceDensity * flow,
      choked: (pressureRatio <= i.criticalRatio ? 'choked' : 'not choked') as Choked,
    };
  },
});

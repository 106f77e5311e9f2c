import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { absoluteProblems } from './absolute-problems.ts';
import {
  conductances,
  criticalRatios,
  gaugePressures,
  roomTemperatures,
  standardAtmospheres,
} from './bounds.ts';
import { normalTemperature } from './dry-air.ts';
import { restrictionLoss } from './restriction-outlet.ts';
import { iso6358, iso6358Series } from './sources.ts';

/**
 * Pressures behind every component of a chain that passes a flow.
 *
 * Method   p[i+1] = p[i] (b[i] + (1 - b[i]) sqrt(1 - (q/(C[i] p[i]))^2)), the flow equation turned round
 * Symbols  C  conductances    [n]     m3/(s Pa)   at the temperature of the air: C sqrt(T_0/T)
 *          b  criticalRatios  [n]     1
 *          p  upstream        scalar  Pa absolute
 *          q  flow            scalar  m3/s normal air
 * Returns  pressures, Pa absolute, the last of a choked chain being the highest that still lets q pass; shorter
 *          than the chain where one component cannot pass q
 * Cost     O(n)
 * Source   `restrictionLoss`; ISO 6358-3 names the technique (abstract read)
 */
export const chainPressures = (
  conductanceList: readonly number[],
  criticalRatioList: readonly number[],
  upstream: number,
  flow: number,
): number[] => {
  const pressures: number[] = [];
  let p = upstream;
  for (let i = 0; i < conductanceList.length; i++) {
    const loss = restrictionLoss(conductanceList[i]!, criticalRatioList[i]!, p, flow);
    if (Number.isNaN(loss)) return pressures;
    p -= loss;
    pressures.push(p);
  }
  return pressures;
};

/** Pressure behind the last component of a chain, Pa absolute; NaN where one of them cannot pass the flow. */
const chainOutlet = (
  conductanceList: readonly number[],
  criticalRatioList: readonly number[],
  upstream: number,
  flow: number,
): number => {
  let p = upstream;
  for (let i = 0; i < conductanceList.length; i++) {
    p -= restrictionLoss(conductanceList[i]!, criticalRatioList[i]!, p, flow);
  }
  return p;
};

/** Steps until the flow is known to the last digit of a double. */
const halvings = 60;

/**
 * Flow through components in series.
 *
 * Method   bisection on q: too large where a component cannot pass it or the last pressure falls under p_2
 * Symbols  C, b, upstream  as in `chainPressures`
 *          p_2  downstream  scalar  Pa absolute  0 gives the choked flow
 * Returns  m3/s normal air; 0 where p_2 is not under p_1
 * Cost     O(60 n)
 * Source   `chainPressures`
 */
export const chainFlow = (
  conductanceList: readonly number[],
  criticalRatioList: readonly number[],
  upstream: number,
  downstream: number,
): number => {
  let low = 0;
  let high = conductanceList.reduce((least, C) => Math.min(least, C * upstream), Number.POSITIVE_INFINITY);
  if (downstream >= upstream) return 0;
  for (let i = 0; i < halvings; i++) {
    const flow = 0.5 * (low + high);
    if (chainOutlet(conductanceList, criticalRatioList, upstream, flow) >= downstream) low = flow;
    else high = flow;
  }
  return low;
};

interface SeriesFlowInputs {
  readonly conductances: readonly number[];
  readonly criticalRatios: readonly number[];
  readonly upstream: number;
  readonly downstream: number;
  readonly atmosphere: number;
  readonly temperature: number;
}

export const seriesFlowSheet = defineSheet({
  id: 'air/series-flow',
  version: 1,
  inputs: {
    conductances: listField('sonicConductance', 'C_i', conductances),
    criticalRatios: listField('ratio', 'b_i', criticalRatios),
    upstream: numberField('gaugePressure', 'p_1', gaugePressures),
    downstream: numberField('gaugePressure', 'p_2', gaugePressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T', roomTemperatures),
  },
  outputs: {
    flow: numberField('normalAirFlow', 'q'),
    pressures: listField('gaugePressure', 'p_i'),
    conductance: numberField('sonicConductance', 'C'),
    criticalRatio: numberField('ratio', 'b'),
  },
  formula: [
    'p_{i+1} = p_i \\left( b_i + (1 - b_i) \\sqrt{1 - \\left( \\frac{q}{C_i p_i} \\right)^2} \\right), \\quad p_n(q) = p_2',
    'C = \\frac{q^*}{p_1}, \\quad b = \\frac{p_n(q^*)}{p_1}, \\quad q^* \\text{ the most that passes}',
  ],
  limits: [
    { code: 'SERIES_NO_FLOW', broken: ({ upstream, downstream }) => downstream >= upstream },
    { code: 'RESTRICTION_NOZZLE', broken: ({ criticalRatios: b }) => b.some((each) => each > 0.5) },
    { code: 'SERIES_ORDER', broken: ({ conductances: c }) => c.length > 1 },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [iso6358, iso6358Series],
  check: (i) => [
    ...listLengths({ conductances: i.conductances, criticalRatios: i.criticalRatios }),
    ...absoluteProblems({ upstream: i.upstream, downstream: i.downstream }, i.atmosphere),
  ],
  compute: (i: SeriesFlowInputs) => {
    const warm = Math.sqrt(normalTemperature / i.temperature);
    const c = i.conductances.map((each) => each * warm);
    const [p1, p2] = [i.upstream + i.atmosphere, i.downstream + i.atmosphere];
    const flow = chainFlow(c, i.criticalRatios, p1, p2);
    const most = chainFlow(c, i.criticalRatios, p1, 0);
    return {
      flow,
      pressures: chainPressures(c, i.criticalRatios, p1, flow).map((p, n) =>
        // behind the last the pressure is the one given, lower than the march where the chain is choked
        n === c.length - 1 && flow > 0 ? i.downstream : p - i.atmosphere,
      ),
      conductance: most / (p1 * warm),
      criticalRatio: (chainPressures(c, i.criticalRatios, p1, most).at(-1) ?? 0) / p1,
    };
  },
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { densities, flowCoefficients } from './bounds.ts';
import { derived } from './sources.ts';
import { valveFlow } from './valve-flow.ts';

/**
 * Kv that one lane has together with the common line that it shares with its neighbours.
 *
 * Method   1/K^2 = 1/Kv^2 + n^2/Kc^2: the common line sees n lanes' flow
 * Symbols  Kv  kv        scalar  m3/h  of one lane
 *          Kc  commonKv  scalar  m3/h  of supply and manifold up to the lanes
 *          n   open      count   lanes open, equal
 * Returns  Kv as seen by one lane, m3/h
 * Cost     O(1)
 * Source   two square-law resistances in series, derived
 */
export const sharedKv = (kv: number, commonKv: number, open: number): number =>
  1 / Math.sqrt(kv ** -2 + (open / commonKv) ** 2);

interface ManifoldInputs {
  readonly pressureDifference: number;
  readonly kv: number;
  readonly commonKv: number;
  readonly lanes: number;
  readonly open: number;
  readonly density: number;
}

export const manifoldSheet = defineSheet({
  id: 'water/manifold',
  version: 1,
  inputs: {
    pressureDifference: numberField('pressureDifference', '\\Delta p', { least: 0, most: 1e9 }),
    kv: numberField('flowCoefficient', 'K_v', flowCoefficients),
    commonKv: numberField('flowCoefficient', 'K_c', flowCoefficients),
    lanes: numberField('count', 'N', { least: 1, most: 1000 }),
    open: numberField('count', 'n', { least: 1, most: 1000 }),
    density: numberField('density', '\\rho', densities),
  },
  outputs: {
    laneFlow: numberField('volumeFlow', 'q(n)'),
    flow: numberField('volumeFlow', 'n\\, q(n)'),
    aloneOverAll: numberField('ratio', '\\frac{q(1)}{q(N)}'),
    designIndex: numberField('ratio', '\\frac{R_c N^2}{R_v}'),
  },
  formula: [
    'q(n) = \\frac{1}{3600} \\left( \\frac{1}{K_v^2} + \\frac{n^2}{K_c^2} \\right)^{-1/2} \\sqrt{ \\frac{\\Delta p}{10^5} \\cdot \\frac{1000}{\\rho} }',
    '\\frac{R_c N^2}{R_v} = \\frac{N^2 K_v^2}{K_c^2}',
  ],
  limits: [{ code: 'MANIFOLD_UNEVEN', broken: (_, { aloneOverAll }) => aloneOverAll > 1.05 }],
  sources: [derived],
  check: ({ lanes, open }) =>
    open > lanes ? [{ code: 'MANIFOLD_OPEN', path: 'open', given: open, allowed: `<= ${lanes}` }] : [],
  compute: ({ pressureDifference, kv, commonKv, lanes, open, density }: ManifoldInputs) => {
    const laneFlow = valveFlow(sharedKv(kv, commonKv, open), pressureDifference, density);
    return {
      laneFlow,
      flow: open * laneFlow,
      aloneOverAll: sharedKv(kv, commonKv, 1) / sharedKv(kv, commonKv, lanes),
      designIndex: (lanes * kv) ** 2 / commonKv ** 2,
    };
  },
});

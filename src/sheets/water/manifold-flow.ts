import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { densities, gaugePressures, heights } from './bounds.ts';
import { laneFlow } from './lane-flow.ts';
import { derived, kvStandard } from './sources.ts';

interface ManifoldFlowInputs {
  readonly kv: readonly number[];
  readonly outletHeight: readonly number[];
  readonly manifoldPressure: number;
  readonly manifoldHeight: number;
  readonly density: number;
}

/** What all open lanes together take from a manifold: each by `laneFlow`, summed. */
export const manifoldFlowSheet = defineSheet({
  id: 'water/manifold-flow',
  version: 1,
  inputs: {
    kv: listField('flowCoefficient', 'K_{v,i}', { least: 0, most: 1e6 }),
    outletHeight: listField('length', 'z_{o,i}', heights),
    manifoldPressure: numberField('gaugePressure', 'p_m', gaugePressures),
    manifoldHeight: numberField('length', 'z_m', heights),
    density: numberField('density', '\\rho', densities),
  },
  outputs: { flow: numberField('volumeFlow', 'Q') },
  formula: [
    'Q = \\sum_i \\frac{K_{v,i}}{3600} \\sqrt{ \\frac{p_m + \\rho g (z_m - z_{o,i})}{10^5} \\cdot \\frac{1000}{\\rho} }',
  ],
  limits: [],
  sources: [derived, kvStandard],
  check: ({ kv, outletHeight }) => listLengths({ kv, outletHeight }),
  compute: (i: ManifoldFlowInputs) => ({
    flow: i.kv.reduce(
      (sum, kv, lane) =>
        sum + laneFlow(kv, i.manifoldPressure, i.manifoldHeight, i.outletHeight[lane] ?? 0, i.density),
      0,
    ),
  }),
});

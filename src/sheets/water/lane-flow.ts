import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { densities, flowCoefficients, gaugePressures, heights } from './bounds.ts';
import { derived, kvStandard } from './sources.ts';
import { valveFlow } from './valve-flow.ts';

/**
 * Pressure that drives one lane, from the manifold to the free jet.
 *
 * Method   dp = p_m + rho g (z_m - z_o)
 * Symbols  p_m  manifoldPressure  scalar  Pa gauge
 *          z_m  manifoldHeight    scalar  m      over the datum
 *          z_o  outletHeight      scalar  m      of the free jet, or of the level over a bottom-up nozzle
 *          rho  density           scalar  kg/m3
 * Returns  pressure difference, Pa
 * Cost     O(1)
 * Source   Bernoulli's equation
 */
export const lanePressure = (
  manifoldPressure: number,
  manifoldHeight: number,
  outletHeight: number,
  density: number,
): number => manifoldPressure + density * standardGravity * (manifoldHeight - outletHeight);

/**
 * Flow of one lane of a filler.
 *
 * Method   q = Kv/3600 sqrt(dp/1e5 * 1000/rho),  dp = p_m + rho g (z_m - z_o); nothing where dp <= 0
 * Symbols  as in `lanePressure`;  Kv  kv  scalar  m3/h  of the whole lane, its jet included
 * Returns  flow, m3/s, never negative: a lane does not suck a bottle empty
 * Assumes  turbulent loss, so that the flow goes with the root of the pressure
 * Cost     O(1)
 * Source   `valveFlow`
 */
export const laneFlow = (
  kv: number,
  manifoldPressure: number,
  manifoldHeight: number,
  outletHeight: number,
  density: number,
): number =>
  valveFlow(kv, Math.max(0, lanePressure(manifoldPressure, manifoldHeight, outletHeight, density)), density);

interface LaneFlowInputs {
  readonly kv: number;
  readonly manifoldPressure: number;
  readonly manifoldHeight: number;
  readonly outletHeight: number;
  readonly density: number;
}

export const laneFlowSheet = defineSheet({
  id: 'water/lane-flow',
  version: 1,
  inputs: {
    kv: numberField('flowCoefficient', 'K_v', flowCoefficients),
    manifoldPressure: numberField('gaugePressure', 'p_m', gaugePressures),
    manifoldHeight: numberField('length', 'z_m', heights),
    outletHeight: numberField('length', 'z_o', heights),
    density: numberField('density', '\\rho', densities),
  },
  outputs: {
    pressureDifference: numberField('pressureDifference', '\\Delta p'),
    flow: numberField('volumeFlow', 'q'),
  },
  formula: [
    '\\Delta p = p_m + \\rho g (z_m - z_o)',
    'q = \\frac{K_v}{3600} \\sqrt{ \\frac{\\Delta p}{10^5} \\cdot \\frac{1000}{\\rho} }',
  ],
  limits: [{ code: 'LANE_NO_FLOW', broken: (_, { pressureDifference }) => pressureDifference <= 0 }],
  sources: [derived, kvStandard],
  compute: (i: LaneFlowInputs) => ({
    pressureDifference: lanePressure(i.manifoldPressure, i.manifoldHeight, i.outletHeight, i.density),
    flow: laneFlow(i.kv, i.manifoldPressure, i.manifoldHeight, i.outletHeight, i.density),
  }),
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { areas, densities, flows, gaugePressures, heights } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Gauge pressure that a standing liquid makes at a height under its surface.
 *
 * Method   p = p_0 + rho g (z_s - z)
 * Symbols  p_0  surfacePressure  scalar  Pa gauge  0 for an open tank
 *          z_s  surfaceHeight    scalar  m         over the datum
 *          z    height           scalar  m         over the same datum
 *          rho  density          scalar  kg/m3
 * Returns  gauge pressure, Pa
 * Cost     O(1)
 * Source   hydrostatics
 */
export const gravityPressure = (
  surfacePressure: number,
  surfaceHeight: number,
  height: number,
  density: number,
): number => surfacePressure + density * standardGravity * (surfaceHeight - height);

interface GravitySupplyInputs {
  readonly surfaceHeight: number;
  readonly height: number;
  readonly surfacePressure: number;
  readonly density: number;
  readonly planArea: number;
  readonly flow: number;
  readonly makeUp: number;
}

export const gravitySupplySheet = defineSheet({
  id: 'water/gravity-supply',
  version: 1,
  inputs: {
    surfaceHeight: numberField('length', 'z_s', heights),
    height: numberField('length', 'z', { ...heights, assumed: 0 }),
    surfacePressure: numberField('gaugePressure', 'p_0', { ...gaugePressures, assumed: 0 }),
    density: numberField('density', '\\rho', densities),
    planArea: numberField('area', 'A_t', areas),
    flow: numberField('volumeFlow', 'Q', flows),
    makeUp: numberField('volumeFlow', 'Q_m', { ...flows, assumed: 0 }),
  },
  outputs: {
    pressure: numberField('gaugePressure', 'p'),
    fall: numberField('velocity', '\\dot z'),
  },
  formula: ['p = p_0 + \\rho g (z_s - z)', '\\dot z = \\frac{Q - Q_m}{A_t}'],
  limits: [{ code: 'GRAVITY_BELOW_ATMOSPHERE', broken: (_, { pressure }) => pressure < 0 }],
  sources: [derived],
  compute: (i: GravitySupplyInputs) => ({
    pressure: gravityPressure(i.surfacePressure, i.surfaceHeight, i.height, i.density),
    fall: (i.flow - i.makeUp) / i.planArea,
  }),
});

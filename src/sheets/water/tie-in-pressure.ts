import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { densities, gaugePressures, heights, pressureDifferences } from './bounds.ts';
import { arithmetic } from './sources.ts';

/**
 * Pressure of a source at another height, behind what is lost on the way.
 *
 * Method   p = p_0 + rho g (z_0 - z_1 - z_f) - dp
 * Symbols  p_0  pressure  scalar  Pa gauge
 *          rho  density   scalar  kg/m3
 *          z_0  from      scalar  m  where p_0 holds, above the datum
 *          z_1  to        scalar  m  of the tie-in, above the floor under the line
 *          z_f  stands    scalar  m  of that floor, above the datum
 *          dp   loss      scalar  Pa
 * Returns  Pa gauge
 * Cost     O(1)
 * Source   hydrostatics
 */
export const tieInPressure = (
  pressure: number,
  density: number,
  from: number,
  to: number,
  stands: number,
  loss: number,
): number => pressure + density * standardGravity * (from - (to + stands)) - loss;

interface TieInPressureInputs {
  readonly pressure: number;
  readonly density: number;
  readonly from: number;
  readonly to: number;
  readonly stands: number;
  readonly loss: number;
}

export const tieInPressureSheet = defineSheet({
  id: 'water/tie-in-pressure',
  version: 1,
  inputs: {
    pressure: numberField('gaugePressure', 'p_0', gaugePressures),
    density: numberField('density', '\\rho', densities),
    from: numberField('length', 'z_0', { ...heights, assumed: 0 }),
    to: numberField('length', 'z_1', { ...heights, assumed: 0 }),
    stands: numberField('length', 'z_f', { ...heights, assumed: 0 }),
    loss: numberField('pressureDifference', '\\Delta p', { ...pressureDifferences, assumed: 0 }),
  },
  outputs: { left: numberField('gaugePressure', 'p') },
  formula: ['p = p_0 + \\rho g (z_0 - z_1 - z_f) - \\Delta p'],
  limits: [{ code: 'TIE_IN_BELOW_ATMOSPHERE', broken: (_, { left }) => left < 0 }],
  sources: [arithmetic],
  compute: (i: TieInPressureInputs) => ({
    left: tieInPressure(i.pressure, i.density, i.from, i.to, i.stands, i.loss),
  }),
});

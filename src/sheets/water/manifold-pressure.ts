import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { densities, gaugePressures, heights } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Gauge pressure at the manifold from the pressure at the source.
 *
 * Method   p_m = p_s + rho g (z_s - z_m) - dp
 * Symbols  p_s  sourcePressure  scalar  Pa gauge  at the height z_s
 *          z_s  sourceHeight    scalar  m         over the floor's one datum
 *          z_m  manifoldHeight  scalar  m         over the same datum
 *          dp   runLoss         scalar  Pa        of the whole run at the flow in question
 *          rho  density         scalar  kg/m3     of the liquid in the run
 * Returns  gauge pressure, Pa
 * Assumes  the velocity head in the manifold is neglected: 0.1 % of 1 bar at 0.4 m/s
 * Cost     O(1)
 * Source   Bernoulli's equation
 */
export const manifoldPressure = (
  sourcePressure: number,
  sourceHeight: number,
  manifoldHeight: number,
  runLoss: number,
  density: number,
): number => sourcePressure + density * standardGravity * (sourceHeight - manifoldHeight) - runLoss;

interface ManifoldPressureInputs {
  readonly sourcePressure: number;
  readonly sourceHeight: number;
  readonly manifoldHeight: number;
  readonly runLoss: number;
  readonly density: number;
}

export const manifoldPressureSheet = defineSheet({
  id: 'water/manifold-pressure',
  version: 1,
  inputs: {
    sourcePressure: numberField('gaugePressure', 'p_s', gaugePressures),
    sourceHeight: numberField('length', 'z_s', heights),
    manifoldHeight: numberField('length', 'z_m', heights),
    runLoss: numberField('pressureDifference', '\\Delta p', { least: 0, most: 1e9 }),
    density: numberField('density', '\\rho', densities),
  },
  outputs: { manifoldPressure: numberField('gaugePressure', 'p_m') },
  formula: ['p_m = p_s + \\rho g (z_s - z_m) - \\Delta p'],
  limits: [
    { code: 'MANIFOLD_BELOW_ATMOSPHERE', broken: (_, { manifoldPressure }) => manifoldPressure < 0 },
    { code: 'MANIFOLD_NO_PRESSURE', broken: (_, { manifoldPressure }) => manifoldPressure <= -101325 },
  ],
  sources: [derived],
  compute: (i: ManifoldPressureInputs) => ({
    manifoldPressure: manifoldPressure(
      i.sourcePressure,
      i.sourceHeight,
      i.manifoldHeight,
      i.runLoss,
      i.density,
    ),
  }),
});

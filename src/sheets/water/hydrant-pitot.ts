import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores, densities, dischargeCoefficients } from './bounds.ts';

/**
 * Flow from an open hydrant by a pitot tube in its jet.
 *
 * Method   Q = c pi/4 D^2 sqrt(2 p/rho)
 * Symbols  p    pitotPressure  scalar  Pa gauge
 *          D    bore           scalar  m      of the outlet
 *          c    coefficient    ratio   0.9 smooth, 0.8 square, 0.7 projecting into the barrel
 *          rho  density        scalar  kg/m3
 * Returns  flow, m3/s
 * Cost     O(1)
 * Source   NFPA 291 practice: Q = 29.84 c d^2 sqrt(p) in US gal/min, in, psi
 */
export const pitotFlow = (
  pitotPressure: number,
  bore: number,
  coefficient: number,
  density: number,
): number => coefficient * 0.25 * Math.PI * bore * bore * Math.sqrt((2 * pitotPressure) / density);

interface HydrantPitotInputs {
  readonly pitotPressure: number;
  readonly bore: number;
  readonly coefficient: number;
  readonly density: number;
}

export const hydrantPitotSheet = defineSheet({
  id: 'water/hydrant-pitot',
  version: 1,
  inputs: {
    pitotPressure: numberField('gaugePressure', 'p', { least: 0, most: 1e8 }),
    bore: numberField('length', 'D', bores),
    coefficient: numberField('ratio', 'c', { ...dischargeCoefficients, assumed: 0.9 }),
    density: numberField('density', '\\rho', { ...densities, assumed: 999.1 }),
  },
  outputs: { flow: numberField('volumeFlow', 'Q') },
  formula: ['Q = c \\frac{\\pi D^2}{4} \\sqrt{ \\frac{2 p}{\\rho} }'],
  limits: [{ code: 'PITOT_WEAK', broken: ({ pitotPressure }) => pitotPressure < 68_948 }],
  sources: [
    {
      title: 'NFPA 291, recommended practice for fire flow testing',
      place: 'pitot formula, read second-hand on public calculation pages',
      mark: 'read',
    },
  ],
  compute: (i: HydrantPitotInputs) => ({
    flow: pitotFlow(i.pitotPressure, i.bore, i.coefficient, i.density),
  }),
});

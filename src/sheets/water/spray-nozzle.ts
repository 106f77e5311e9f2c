import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { densities, flows } from './bounds.ts';

/**
 * Flow of a spray nozzle at another pressure.
 *
 * Method   Q = Q_0 (p/p_0)^n sqrt(1000/rho)
 * Symbols  Q_0  ratedFlow      scalar  m3/s  of water, as the nozzle's paper gives it
 *          p_0  ratedPressure  scalar  Pa    difference across the nozzle
 *          p    pressure       scalar  Pa    difference across the nozzle, not at the pump
 *          n    exponent       ratio   0.50 flat, hollow cone, solid stream; 0.46 full cone; 0.44 wide full cone
 *          rho  density        scalar  kg/m3
 * Returns  flow, m3/s
 * Cost     O(1)
 * Source   technical pages of nozzle makers, read
 */
export const sprayFlow = (
  ratedFlow: number,
  ratedPressure: number,
  pressure: number,
  exponent: number,
  density: number,
): number => ratedFlow * (pressure / ratedPressure) ** exponent * Math.sqrt(1000 / density);

interface SprayNozzleInputs {
  readonly ratedFlow: number;
  readonly ratedPressure: number;
  readonly pressure: number;
  readonly exponent: number;
  readonly density: number;
}

export const sprayNozzleSheet = defineSheet({
  id: 'water/spray-nozzle',
  version: 1,
  inputs: {
    ratedFlow: numberField('volumeFlow', 'Q_0', flows),
    ratedPressure: numberField('pressureDifference', 'p_0', { least: 1, most: 1e9 }),
    pressure: numberField('pressureDifference', 'p', { least: 0, most: 1e9 }),
    exponent: numberField('ratio', 'n', { least: 0.3, most: 0.6, assumed: 0.5 }),
    density: numberField('density', '\\rho', { ...densities, assumed: 1000 }),
  },
  outputs: { flow: numberField('volumeFlow', 'Q') },
  formula: ['Q = Q_0 \\left( \\frac{p}{p_0} \\right)^n \\sqrt{ \\frac{1000}{\\rho} }'],
  limits: [
    {
      code: 'SPRAY_FAR',
      broken: ({ pressure, ratedPressure }) => pressure < 0.3 * ratedPressure || pressure > 3 * ratedPressure,
    },
  ],
  sources: [{ title: 'technical pages of nozzle makers', place: 'flow exponents', mark: 'read' }],
  compute: (i: SprayNozzleInputs) => ({
    flow: sprayFlow(i.ratedFlow, i.ratedPressure, i.pressure, i.exponent, i.density),
  }),
});

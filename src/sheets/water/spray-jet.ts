import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { densities, flows } from './bounds.ts';

/**
 * Speed of a jet behind a nozzle.
 *
 * Method   v = C_v sqrt(2 dp/rho)
 * Symbols  dp   pressure             scalar  Pa  across the nozzle, not at the pump
 *          rho  density              scalar  kg/m3
 *          C_v  velocityCoefficient  ratio   0.95 to 1
 * Returns  m/s
 * Cost     O(1)
 * Source   Bernoulli
 */
export const sprayVelocity = (pressure: number, density: number, velocityCoefficient: number): number =>
  velocityCoefficient * Math.sqrt((2 * pressure) / density);

/** Force of a jet that a wall stops, N: rho Q v. A fan spreads the same force over a wider strip. */
export const sprayImpact = (flow: number, velocity: number, density: number): number =>
  density * flow * velocity;

interface SprayJetInputs {
  readonly flow: number;
  readonly pressure: number;
  readonly density: number;
  readonly velocityCoefficient: number;
}

export const sprayJetSheet = defineSheet({
  id: 'water/spray-jet',
  version: 1,
  inputs: {
    flow: numberField('volumeFlow', 'Q', flows),
    pressure: numberField('pressureDifference', '\\Delta p', { least: 0, most: 1e9 }),
    density: numberField('density', '\\rho', { ...densities, assumed: 1000 }),
    velocityCoefficient: numberField('ratio', 'C_v', { least: 0.3, most: 1, assumed: 1 }),
  },
  outputs: { velocity: numberField('velocity', 'v'), impact: numberField('force', 'F') },
  formula: ['v = C_v \\sqrt{\\frac{2 \\Delta p}{\\rho}}, \\quad F = \\rho Q v'],
  limits: [
    { code: 'SPRAY_JET_NOT_AT_PUMP', broken: () => true },
    { code: 'SPRAY_JET_CUTS', broken: ({ pressure }) => pressure > 2e6 },
  ],
  sources: [{ title: 'Bernoulli and balance of momentum', place: 'derived', mark: 'computed' }],
  compute: (i: SprayJetInputs) => {
    const velocity = sprayVelocity(i.pressure, i.density, i.velocityCoefficient);
    return { velocity, impact: sprayImpact(i.flow, velocity, i.density) };
  },
});

import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { airDensities, liquidDensities, someMasses, weightDensities } from './weighing-bounds.ts';
import { buoyancy } from './weighing-sources.ts';

/** Density at which reference weights are stated, kg/m3: OIML R 33, by convention. */
export const referenceWeightDensity = 8000;
/** Air at sea level in a room, kg/m3: shifts a volume by at most 0.002 % between 15 and 25 degC. */
export const usualAirDensity = 1.2;

/**
 * Volume of a liquid from what the balance shows for it.
 *
 * Method   V = m (1 - rho_a/rho_b)/(rho - rho_a)
 * Symbols  m      mass           scalar  kg, reading for the liquid alone
 *          rho    density        scalar  kg/m3 at the temperature for which the volume is wanted
 *          rho_a  airDensity     scalar  kg/m3
 *          rho_b  weightDensity  scalar  kg/m3 of the weights with which the balance is adjusted
 * Returns  volume, m3, at the temperature of `density`: the mass does not change with it
 * Assumes  a balance adjusted with weights in air
 * Cost     O(1)
 * Source   balance of forces
 */
export const volumeByWeighing = (
  mass: number,
  density: number,
  airDensity: number,
  weightDensity: number,
): number => (mass * (1 - airDensity / weightDensity)) / (density - airDensity);

interface VolumeByWeighingInputs {
  readonly mass: number;
  readonly density: number;
  readonly airDensity: number;
  readonly weightDensity: number;
}

export const volumeByWeighingSheet = defineSheet({
  id: 'contents/volume-by-weighing',
  version: 1,
  inputs: {
    mass: weighedField('mass', 'm', someMasses),
    density: weighedField('density', '\\rho', liquidDensities),
    airDensity: weighedField('density', '\\rho_a', { ...airDensities, assumed: usualAirDensity }),
    weightDensity: weighedField('density', '\\rho_b', {
      ...weightDensities,
      assumed: referenceWeightDensity,
    }),
  },
  outputs: {
    volume: weighedField('volume', 'V'),
    trueMass: weighedField('mass', 'm_v'),
    buoyancy: numberField('ratio', '\\beta'),
  },
  formula: [
    'V = m\\, \\frac{1 - \\rho_a/\\rho_b}{\\rho - \\rho_a}',
    'm_v = \\rho V, \\quad \\beta = \\frac{m_v}{m} - 1',
  ],
  limits: [],
  sources: [buoyancy],
  compute: (i: VolumeByWeighingInputs) => {
    const volume = volumeByWeighing(i.mass, i.density, i.airDensity, i.weightDensity);
    const trueMass = i.density * volume;
    return { volume, trueMass, buoyancy: trueMass / i.mass - 1 };
  },
});

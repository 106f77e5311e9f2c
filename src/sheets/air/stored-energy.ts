import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardAtmospheres, supplyPressures, vessels } from './bounds.ts';
import { idealGas } from './sources.ts';

/**
 * Largest work that compressed air can do against the atmosphere.
 *
 * Method   E = p V ln(p/p_a) - (p - p_a) V
 * Symbols  p    pressure    scalar  Pa absolute
 *          V    volume      scalar  m3
 *          p_a  atmosphere  scalar  Pa absolute
 * Returns  J
 * Assumes  isothermal, ideal gas
 * Cost     O(1)
 * Source   first and second law
 */
export const storedEnergy = (pressure: number, volume: number, atmosphere: number): number =>
  volume * (pressure * Math.log(pressure / atmosphere) - (pressure - atmosphere));

interface StoredEnergyInputs {
  readonly volume: number;
  readonly pressure: number;
  readonly atmosphere: number;
}

export const storedEnergySheet = defineSheet({
  id: 'air/stored-energy',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V', vessels),
    pressure: numberField('gaugePressure', 'p_g', supplyPressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
  },
  outputs: {
    energy: numberField('energy', 'E'),
    upperFigure: numberField('energy', 'E_u'),
  },
  formula: [
    'E = p V \\ln \\frac{p}{p_a} - (p - p_a) V, \\quad E_u = \\frac{(p - p_a) V}{\\gamma - 1}, \\quad p = p_g + p_a',
  ],
  limits: [
    { code: 'ENERGY_RESIDUAL', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [idealGas],
  compute: ({ volume, pressure, atmosphere }: StoredEnergyInputs) => ({
    energy: storedEnergy(pressure + atmosphere, volume, atmosphere),
    upperFigure: (pressure * volume) / 0.4,
  }),
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { temperatures } from './bounds.ts';
import { iapwsLiquid } from './sources.ts';
import { waterDensity } from './water-density.ts';

/**
 * Dynamic viscosity of liquid water at 0.1 MPa.
 *
 * Method   mu = 1e-6 sum a_i (T/300)^b_i
 * Symbols  T   temperature  scalar  K   253.15 to 383.15; the sheet takes 273.15 to 368.15
 * Returns  viscosity  Pa s
 * Assumes  pure water; the pressures of a filling line change it by less than 0.1 %
 * Cost     O(1), no iteration
 * Source   IAPWS SR6-08(2011), liquid water at 0.1 MPa, equation 7
 */
export const waterViscosity = (T: number): number => {
  const t = T / 300;
  return 1e-6 * (280.68 * t ** -1.9 + 511.45 * t ** -7.7 + 61.131 * t ** -19.6 + 0.45903 * t ** -40);
};

export const waterViscositySheet = defineSheet({
  id: 'water/water-viscosity',
  version: 1,
  inputs: { temperature: numberField('temperature', 'T', temperatures) },
  outputs: {
    viscosity: numberField('dynamicViscosity', '\\mu'),
    kinematicViscosity: numberField('kinematicViscosity', '\\nu'),
  },
  formula: [
    '\\mu = 10^{-6} \\sum_{i=1}^{4} a_i \\left( \\frac{T}{300} \\right)^{b_i}',
    '\\nu = \\frac{\\mu}{\\rho(T)}',
  ],
  limits: [],
  sources: [iapwsLiquid],
  compute: ({ temperature }: { readonly temperature: number }) => {
    const viscosity = waterViscosity(temperature);
    return { viscosity, kinematicViscosity: viscosity / waterDensity(temperature) };
  },
});

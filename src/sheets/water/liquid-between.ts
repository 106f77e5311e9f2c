import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { densities, dynamicViscosities } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Density of a liquid between two temperatures at which it is known.
 *
 * Method   rho = rho_1 + x (rho_2 - rho_1),  x = (T - T_1)/(T_2 - T_1)
 * Returns  density, kg/m3
 * Assumes  straight between the points
 */
export const densityBetween = (share: number, low: number, high: number): number =>
  low + share * (high - low);

/**
 * Viscosity of a liquid between two temperatures at which it is known.
 *
 * Method   mu = mu_1 (mu_2/mu_1)^x: straight in the logarithm, since a viscosity falls by a factor a degree
 * Returns  dynamic viscosity, Pa s
 */
export const viscosityBetween = (share: number, low: number, high: number): number =>
  low * (high / low) ** share;

interface LiquidBetweenInputs {
  readonly temperature: number;
  readonly lowTemperature: number;
  readonly highTemperature: number;
  readonly lowDensity: number;
  readonly highDensity: number;
  readonly lowViscosity: number;
  readonly highViscosity: number;
}

const temperatures = { least: 200, most: 700 };

export const liquidBetweenSheet = defineSheet({
  id: 'water/liquid-between',
  version: 1,
  inputs: {
    temperature: numberField('temperature', 'T', temperatures),
    lowTemperature: numberField('temperature', 'T_1', temperatures),
    highTemperature: numberField('temperature', 'T_2', temperatures),
    lowDensity: numberField('density', '\\rho_1', densities),
    highDensity: numberField('density', '\\rho_2', densities),
    lowViscosity: numberField('dynamicViscosity', '\\mu_1', dynamicViscosities),
    highViscosity: numberField('dynamicViscosity', '\\mu_2', dynamicViscosities),
  },
  outputs: {
    density: numberField('density', '\\rho'),
    viscosity: numberField('dynamicViscosity', '\\mu'),
  },
  formula: [
    'x = \\frac{T - T_1}{T_2 - T_1}',
    '\\rho = \\rho_1 + x (\\rho_2 - \\rho_1)',
    '\\mu = \\mu_1 \\left( \\frac{\\mu_2}{\\mu_1} \\right)^x',
  ],
  limits: [
    {
      code: 'LIQUID_OUTSIDE_POINTS',
      broken: (i) => i.temperature < i.lowTemperature || i.temperature > i.highTemperature,
    },
  ],
  sources: [derived],
  check: ({ lowTemperature, highTemperature }) =>
    highTemperature < lowTemperature
      ? [
          {
            code: 'LIQUID_POINTS',
            path: 'highTemperature',
            given: highTemperature,
            allowed: `>= ${lowTemperature}`,
          },
        ]
      : [],
  compute: (i: LiquidBetweenInputs) => {
    const span = i.highTemperature - i.lowTemperature;
    const inside = Math.min(Math.max(i.temperature, i.lowTemperature), i.highTemperature);
    const share = span > 0 ? (inside - i.lowTemperature) / span : 0;
    return {
      density: densityBetween(share, i.lowDensity, i.highDensity),
      viscosity: viscosityBetween(share, i.lowViscosity, i.highViscosity),
    };
  },
});

import type { Si } from '../../quantity/kinds.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absolutePressures, bores, densities } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Speed of a pressure wave in a full elastic pipe, with free gas if any.
 *
 * Method   1/K_m = (1 - alpha)/K + alpha/p;  a = sqrt(K_m/rho_m)/sqrt(1 + K_m D/(E e)),  rho_m = rho (1 - alpha)
 * Symbols  K      bulkModulus     scalar  Pa     2.18e9 for water of 20 degC
 *          rho    density         scalar  kg/m3
 *          D      bore            scalar  m
 *          e      wall            scalar  m      thickness
 *          E      elasticModulus  scalar  Pa     of the wall
 *          alpha  gasFraction     ratio   volume of free gas in that of the whole
 *          p      pressure        scalar  Pa absolute
 * Returns  velocity, m/s
 * Assumes  thin wall, anchored pipe (c1 = 1), gas isothermal and evenly spread; density of the gas left out
 * Cost     O(1)
 * Source   Korteweg-Joukowsky; mixture of two compressibilities
 */
export const waveSpeed = (
  bulkModulus: number,
  density: number,
  bore: number,
  wall: number,
  elasticModulus: number,
  gasFraction: number,
  pressure: Si<'absolutePressure'>,
): number => {
  const K = 1 / ((1 - gasFraction) / bulkModulus + gasFraction / pressure);
  return Math.sqrt(K / (density * (1 - gasFraction)) / (1 + (K * bore) / (elasticModulus * wall)));
};

interface WaveSpeedInputs {
  readonly bulkModulus: number;
  readonly density: number;
  readonly bore: number;
  readonly wall: number;
  readonly elasticModulus: number;
  readonly gasFraction: number;
  readonly pressure: Si<'absolutePressure'>;
}

export const waveSpeedSheet = defineSheet({
  id: 'water/wave-speed',
  version: 1,
  inputs: {
    bulkModulus: numberField('elasticModulus', 'K', { least: 1e8, most: 1e10, assumed: 2.179e9 }),
    density: numberField('density', '\\rho', densities),
    bore: numberField('length', 'D', bores),
    wall: numberField('length', 'e', { least: 1e-5, most: 1 }),
    elasticModulus: numberField('elasticModulus', 'E', { least: 1e6, most: 1e12 }),
    gasFraction: numberField('ratio', '\\alpha', { least: 0, most: 0.5, assumed: 0 }),
    pressure: numberField('absolutePressure', 'p', { ...absolutePressures, assumed: 101325 }),
  },
  outputs: { waveSpeed: numberField('velocity', 'a') },
  formula: [
    '\\frac{1}{K_m} = \\frac{1 - \\alpha}{K} + \\frac{\\alpha}{p}',
    'a = \\sqrt{ \\frac{K_m}{\\rho (1 - \\alpha)} } \\left( 1 + \\frac{K_m D}{E e} \\right)^{-1/2}',
  ],
  limits: [
    { code: 'WAVE_THICK_WALL', broken: ({ wall, bore }) => wall > 0.2 * bore },
    { code: 'WAVE_FREE_GAS', broken: ({ gasFraction }) => gasFraction > 0 },
  ],
  sources: [derived],
  compute: (i: WaveSpeedInputs) => ({
    waveSpeed: waveSpeed(
      i.bulkModulus,
      i.density,
      i.bore,
      i.wall,
      i.elasticModulus,
      i.gasFraction,
      i.pressure,
    ),
  }),
});

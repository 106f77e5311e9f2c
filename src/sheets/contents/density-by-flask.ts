import type { Problem } from '../../quantity/problem.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { referenceWeightDensity, usualAirDensity } from './volume-by-weighing.ts';
import { airDensities, masses, someMasses, someVolumes, weightDensities } from './weighing-bounds.ts';
import { buoyancy } from './weighing-sources.ts';

/**
 * True density of a liquid of which a flask of known volume was weighed.
 *
 * Method   rho = rho_a + (m/V)(1 - rho_a/rho_b)
 * Symbols  m      net            scalar  kg, full less empty
 *          V      volume         scalar  m3 of the flask at the temperature of the liquid
 *          rho_a  airDensity     scalar  kg/m3
 *          rho_b  weightDensity  scalar  kg/m3
 * Returns  kg/m3 at the temperature of the liquid
 * Cost     O(1)
 * Source   balance of forces
 */
export const densityByFlask = (
  net: number,
  volume: number,
  airDensity: number,
  weightDensity: number,
): number => airDensity + (net / volume) * (1 - airDensity / weightDensity);

interface DensityByFlaskInputs {
  readonly full: number;
  readonly empty: number;
  readonly volume: number;
  readonly airDensity: number;
  readonly weightDensity: number;
}

const emptyUnderFull = ({ full, empty }: DensityByFlaskInputs): readonly Problem[] =>
  empty < full ? [] : [{ code: 'FLASK_EMPTY_OVER_FULL', path: 'empty', given: empty, allowed: `< ${full}` }];

export const densityByFlaskSheet = defineSheet({
  id: 'contents/density-by-flask',
  version: 1,
  inputs: {
    full: numberField('mass', 'm_f', someMasses),
    empty: numberField('mass', 'm_e', masses),
    volume: numberField('volume', 'V', someVolumes),
    airDensity: numberField('density', '\\rho_a', { ...airDensities, assumed: usualAirDensity }),
    weightDensity: numberField('density', '\\rho_b', { ...weightDensities, assumed: referenceWeightDensity }),
  },
  outputs: { inAir: numberField('density', "\\rho'"), density: numberField('density', '\\rho') },
  formula: [
    "\\rho' = \\frac{m_f - m_e}{V}",
    "\\rho = \\rho_a + \\rho' \\left( 1 - \\frac{\\rho_a}{\\rho_b} \\right)",
  ],
  limits: [
    // lighter than alcohol, heavier than syrup: a slip of weighing or of the flask's volume
    { code: 'FLASK_ODD', broken: (_, { density }) => density < 780 || density > 1450 },
  ],
  sources: [buoyancy],
  check: emptyUnderFull,
  compute: (i: DensityByFlaskInputs) => {
    const net = i.full - i.empty;
    return {
      inAir: net / i.volume,
      density: densityByFlask(net, i.volume, i.airDensity, i.weightDensity),
    };
  },
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { shares } from './bounds.ts';
import { chemicalCaution } from './caution.ts';
import { derived } from './sources.ts';

/** Thin solutions weigh as much as water, kg/m3: 1 % of caustic is 10.1 g/L, 2 % are 20.4. */
const waterDensity = 1000;

/**
 * Concentration of a thin solution told by its share, thinned further where water is added.
 *
 * Method   c = rho w/(1 + n)
 * Symbols  w  share  scalar  by mass
 *          n  water  scalar  volumes of water to one of the solution
 * Returns  kg/m3
 * Assumes  the solution weighs as much as water: 2 % too little at 2 % of caustic, 1 ppm is 1 mg/L
 * Cost     O(1)
 * Source   definition
 */
export const solutionConcentration = (share: number, water: number): number =>
  (waterDensity * share) / (1 + water);

interface SolutionInputs {
  readonly share: number;
  readonly water: number;
}

export const solutionConcentrationSheet = defineSheet({
  id: 'hygiene/solution-concentration',
  version: 1,
  inputs: {
    share: numberField('massFraction', 'w', shares),
    water: numberField('ratio', 'n', { least: 0, most: 1e6, assumed: 0 }),
  },
  outputs: { concentration: numberField('soluteConcentration', 'c') },
  formula: ['c = \\frac{1000\\ \\mathrm{kg/m^3} \\cdot w}{1 + n}'],
  limits: [{ code: 'SOLUTION_THICK', broken: ({ share }) => share > 0.03 }, chemicalCaution],
  sources: [derived],
  compute: ({ share, water }: SolutionInputs) => ({ concentration: solutionConcentration(share, water) }),
});

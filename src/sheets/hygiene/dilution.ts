import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { concentrationsAboveZero, volumes } from './bounds.ts';
import { always, chemicalCaution } from './caution.ts';
import { cdcDilution, derived } from './sources.ts';

/**
 * Concentrate that a final volume of a weaker solution takes.
 *
 * Method   C_1 V_1 = C_2 V_2, V_2 the final volume
 * Symbols  C_1  strong  scalar  kg/m3  > 0
 *          C_2  weak    scalar  kg/m3  <= C_1
 *          V_2  final   scalar  m3
 * Returns  volume of the concentrate, m3
 * Assumes  volumes add up
 * Cost     O(1)
 * Source   balance
 */
export const concentrateVolume = (strong: number, weak: number, final: number): number =>
  (weak * final) / strong;

interface DilutionInputs {
  readonly strong: number;
  readonly weak: number;
  readonly final: number;
}

export const dilutionSheet = defineSheet({
  id: 'hygiene/dilution',
  version: 1,
  inputs: {
    strong: numberField('soluteConcentration', 'C_1', { least: 1e-6, most: concentrationsAboveZero.most }),
    weak: numberField('soluteConcentration', 'C_2', { least: 1e-6, most: concentrationsAboveZero.most }),
    final: numberField('volume', 'V_2', volumes),
  },
  outputs: {
    concentrate: numberField('volume', 'V_1'),
    water: numberField('volume', 'V_2 - V_1'),
    parts: numberField('ratio', 'C_1 / C_2 - 1'),
  },
  formula: ['V_1 = \\frac{C_2 V_2}{C_1}, \\quad \\text{parts of water} = \\frac{C_1}{C_2} - 1'],
  limits: [always('DILUTION_ADD_TO_WATER'), always('HYPOCHLORITE_WHICH_PERCENT'), chemicalCaution],
  sources: [derived, cdcDilution],
  check: ({ strong, weak }) =>
    weak > strong ? [{ code: 'DILUTION_STRONGER', path: 'weak', given: weak, allowed: `<= ${strong}` }] : [],
  compute: ({ strong, weak, final }: DilutionInputs) => {
    const concentrate = concentrateVolume(strong, weak, final);
    return { concentrate, water: final - concentrate, parts: strong / weak - 1 };
  },
});

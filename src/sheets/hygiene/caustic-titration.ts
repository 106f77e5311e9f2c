import type { Problem } from '../../quantity/problem.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { chemicalCaution } from './caution.ts';
import { neutralisation } from './sources.ts';

/** kg in a mole of NaOH, 40.00, and in half a mole of Na2CO3, 105.99/2: what one equivalent of acid neutralises. */
const caustic = 0.04;
const halfCarbonate = 0.105988 / 2;

interface TitrationInputs {
  readonly sample: number;
  readonly normality: number;
  readonly pink: number;
  readonly total: number;
}

/**
 * Free caustic and carbonate of a bath from two indicators.
 *
 * Method   NaOH = (2P - M) N, none for P < M/2;  carbonate = 2(M - P) N, at most 2P N, in equivalents of acid
 * Symbols  P  pink       scalar  m3      acid to phenolphthalein, about pH 8.3
 *          M  total      scalar  m3      all acid to methyl orange, about pH 4.3
 *          N  normality  scalar  mol/m3
 *             sample     scalar  m3
 * Returns  NaOH and Na2CO3, kg/m3
 * Cost     O(1)
 * Source   equivalents; below P = M/2 the rest is bicarbonate
 */
export const freeCaustic = ({ sample, normality, pink, total }: TitrationInputs) => ({
  sodiumHydroxide: (Math.max(0, 2 * pink - total) * normality * caustic) / sample,
  carbonate: (2 * Math.min(total - pink, pink) * normality * halfCarbonate) / sample,
});

const volumes = { least: 0, most: 0.01 } as const;

const lessThanPink = ({ pink, total }: TitrationInputs): readonly Problem[] =>
  total < pink ? [{ code: 'TITRATION_TOTAL', path: 'total', given: total, allowed: `>= ${pink}` }] : [];

export const causticTitrationSheet = defineSheet({
  id: 'hygiene/caustic-titration',
  version: 1,
  inputs: {
    sample: numberField('volume', 'V_s', { least: 1e-7, most: 0.1 }),
    normality: numberField('equivalentConcentration', 'N', { least: 0.1, most: 2e4 }),
    pink: numberField('volume', 'P', volumes),
    total: numberField('volume', 'M', volumes),
  },
  outputs: {
    sodiumHydroxide: numberField('soluteConcentration', 'c_{\\mathrm{NaOH}}'),
    carbonate: numberField('soluteConcentration', 'c_{\\mathrm{Na_2CO_3}}'),
    alkali: numberField('soluteConcentration', 'c_M'),
  },
  formula: [
    'c_{\\mathrm{NaOH}} = 40.00 \\frac{(2 P - M) N}{V_s}, \\quad c_{\\mathrm{Na_2CO_3}} = 52.99 \\frac{2 (M - P) N}{V_s}, \\quad P \\ge \\frac{M}{2}',
    'c_M = 40.00 \\frac{M N}{V_s}',
  ],
  limits: [
    { code: 'TITRATION_NO_CAUSTIC', broken: ({ pink, total }) => pink <= 0.5 * total },
    { code: 'TITRATION_FREE_COUNTS', broken: (_, { carbonate }) => carbonate > 0 },
    chemicalCaution,
  ],
  sources: [neutralisation],
  check: lessThanPink,
  compute: (i: TitrationInputs) => ({
    ...freeCaustic(i),
    alkali: (i.total * i.normality * caustic) / i.sample,
  }),
});

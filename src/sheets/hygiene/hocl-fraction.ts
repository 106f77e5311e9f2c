import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { acidities, disinfectants } from './bounds.ts';
import { always, chemicalCaution } from './caution.ts';
import { acidConstant } from './sources.ts';

/** -log10 of 2.7e-8, the acid constant of hypochlorous acid at 20 degC. */
const exponent = -Math.log10(2.7e-8);

/**
 * Share of free chlorine that is hypochlorous acid.
 *
 * Method   a = 1/(1 + 10^(pH - pKa)),  pKa = 7.569
 * Symbols  pH  acidity  scalar
 * Returns  share
 * Assumes  20 degC, weak solution
 * Cost     O(1)
 * Source   Ka = 2.7e-8 at 20 degC, public page
 */
export const hypochlorousShare = (acidity: number): number => 1 / (1 + 10 ** (acidity - exponent));

interface HoclInputs {
  readonly acidity: number;
  readonly chlorine: number;
}

export const hoclFractionSheet = defineSheet({
  id: 'hygiene/hocl-fraction',
  version: 1,
  inputs: {
    acidity: numberField('acidity', '\\mathrm{pH}', acidities),
    chlorine: numberField('soluteConcentration', 'C', { ...disinfectants, assumed: 0 }),
  },
  outputs: { share: numberField('ratio', 'a'), hypochlorous: numberField('soluteConcentration', 'a C') },
  formula: ['a = \\frac{1}{1 + 10^{\\mathrm{pH} - \\mathrm{p}K_a}}, \\quad K_a = 2.7 \\cdot 10^{-8}'],
  limits: [
    always('CHLORINE_STRIP_TOTAL'),
    // chlorine gas leaves the water where it turns acid
    { code: 'CHLORINE_ACID', broken: ({ acidity }) => acidity < 5 },
    chemicalCaution,
  ],
  sources: [acidConstant],
  compute: ({ acidity, chlorine }: HoclInputs) => {
    const share = hypochlorousShare(acidity);
    return { share, hypochlorous: share * chlorine };
  },
});

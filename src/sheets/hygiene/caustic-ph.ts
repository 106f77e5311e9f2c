import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { concentrations } from './bounds.ts';
import { always, chemicalCaution } from './caution.ts';
import { derived } from './sources.ts';

/** Molar mass of NaOH, kg/mol, and the ion product of water at 25 degC, (mol/L)2. */
const molarMass = 0.04;
const ionProduct = 1e-14;

/**
 * pH of sodium hydroxide in pure water.
 *
 * Method   [OH] - Kw/[OH] = c/M, so [OH] = (s + sqrt(s^2 + 4 Kw))/2 with s = c/M;  pH = 14 + log10 [OH]
 *          where s is far above 1e-7 this is 14 + log10(c/40000) with c in mg/L
 * Symbols  c  concentration  scalar  kg/m3
 * Returns  pH
 * Assumes  pure water without a buffer, 25 degC, no activity
 * Cost     O(1)
 * Source   neutrality of charge
 */
export const causticAcidity = (concentration: number): number => {
  const strong = concentration / molarMass / 1000;
  return 14 + Math.log10(0.5 * (strong + Math.sqrt(strong * strong + 4 * ionProduct)));
};

export const causticPhSheet = defineSheet({
  id: 'hygiene/caustic-ph',
  version: 1,
  inputs: { concentration: numberField('soluteConcentration', 'c', { ...concentrations, most: 40 }) },
  outputs: { acidity: numberField('acidity', '\\mathrm{pH}') },
  formula: [
    '\\mathrm{pH} = 14 + \\log_{10} \\frac{s + \\sqrt{s^2 + 4 \\cdot 10^{-14}}}{2}, \\quad s = \\frac{c}{40 \\, \\mathrm{g/mol}}',
  ],
  limits: [
    always('UNBUFFERED'),
    // 40 CFR 261.22, memory
    { code: 'CAUSTIC_WASTE', broken: (_, { acidity }) => acidity >= 12.5 },
    chemicalCaution,
  ],
  sources: [derived],
  compute: ({ concentration }: { readonly concentration: number }) => ({
    acidity: causticAcidity(concentration),
  }),
});

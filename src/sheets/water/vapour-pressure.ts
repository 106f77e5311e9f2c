import { type Si, si } from '../../quantity/kinds.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { temperatures } from './bounds.ts';

/** Critical temperature, K, and pressure, Pa, of water. */
const Tc = 647.096;
const pc = 22.064e6;

/**
 * Vapour pressure of water.
 *
 * Method   ln(p/p_c) = T_c/T (a1 x + a2 x^1.5 + a3 x^3 + a4 x^3.5 + a5 x^4 + a6 x^7.5),  x = 1 - T/T_c
 * Symbols  T  temperature  scalar  K  273.16 to 647
 * Returns  absolute pressure, Pa
 * Cost     O(1)
 * Source   IAPWS SR1-86(1992), saturation equation of Wagner and Pruss (memory of the coefficients)
 */
export const vapourPressure = (T: number): Si<'absolutePressure'> => {
  const x = 1 - T / Tc;
  const root = Math.sqrt(x);
  const x3 = x * x * x;
  const sum =
    x * (-7.85951783 + 1.84408259 * root) +
    x3 * (-11.7866497 + 22.6807411 * root - 15.9618719 * x + 1.80122502 * x3 * x * root);
  return si('absolutePressure', pc * Math.exp((Tc / T) * sum));
};

export const vapourPressureSheet = defineSheet({
  id: 'water/vapour-pressure',
  version: 1,
  inputs: { temperature: numberField('temperature', 'T', temperatures) },
  outputs: { vapourPressure: numberField('absolutePressure', 'p_v') },
  formula: [
    '\\ln \\frac{p_v}{p_c} = \\frac{T_c}{T} \\left( a_1 x + a_2 x^{1.5} + a_3 x^3 + a_4 x^{3.5} + a_5 x^4 + a_6 x^{7.5} \\right), \\quad x = 1 - \\frac{T}{T_c}',
  ],
  limits: [],
  sources: [{ title: 'IAPWS SR1-86, saturation properties', edition: '1992', mark: 'memory' }],
  compute: ({ temperature }: { readonly temperature: number }) => ({
    vapourPressure: vapourPressure(temperature),
  }),
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { temperatures } from './bounds.ts';
import { iapwsLiquid } from './sources.ts';

/** Specific gas constant of water, J/(kg K), of IAPWS SR6-08. */
const R = 461.51805;
/** The release's normalising temperature and pressure are 10 K and 0.1 MPa. */
const scale = (R * 10) / 1e5;

/**
 * Density of liquid water at 0.1 MPa.
 *
 * Method   1/rho = (R 10/0.1e6) [a5 + sum a_i alpha^n_i + sum b_i beta^m_i],  alpha = 10/(593 - T), beta = 10/(T - 232)
 * Symbols  T   temperature  scalar  K   253.15 to 383.15; the sheet takes 273.15 to 368.15
 * Returns  density   kg/m3
 * Assumes  0.1 MPa: 10 bar more make it 0.05 % denser; no dissolved gas or solids
 * Cost     O(1), no iteration
 * Source   IAPWS SR6-08(2011), liquid water at 0.1 MPa, equation for the specific volume
 */
export const waterDensity = (T: number): number => {
  const alpha = 10 / (593 - T);
  const beta = 10 / (T - 232);
  const alpha2 = alpha * alpha;
  const alpha4 = alpha2 * alpha2;
  const warm =
    alpha4 *
    (6.74458446e3 +
      alpha * (-2.22521604e5 + alpha2 * (1.00231247e8 + alpha * (-1.63552118e9 + alpha * 8.32299658e9))));
  const cold =
    beta *
    (5.78545292e-3 +
      beta *
        (-1.53195665e-2 +
          beta * (3.11337859e-2 + beta * (-4.23546241e-2 + beta * (3.38713507e-2 + beta * -1.19946761e-2)))));
  return 1 / (scale * (1.93763157e-2 + warm + cold));
};

export const waterDensitySheet = defineSheet({
  id: 'water/water-density',
  version: 1,
  inputs: { temperature: numberField('temperature', 'T', temperatures) },
  outputs: { density: numberField('density', '\\rho') },
  formula: [
    '\\frac{1}{\\rho} = \\frac{10 R}{p_0} \\left( a_5 + \\sum_{i=6}^{10} a_i \\alpha^{n_i} + \\sum_{i=5}^{10} b_i \\beta^{m_i} \\right)',
    '\\alpha = \\frac{10}{593 - T}, \\quad \\beta = \\frac{10}{T - 232}',
  ],
  limits: [],
  sources: [iapwsLiquid],
  compute: ({ temperature }: { readonly temperature: number }) => ({ density: waterDensity(temperature) }),
});

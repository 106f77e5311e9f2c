import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores } from './bounds.ts';
import { derived, kvStandard } from './sources.ts';

const gallonUS = 3.785411784e-3;
const gallonImperial = 4.54609e-3;
const poundPerSquareInch = 6894.757293168361;
/** m3/h at 1 bar from one gallon in a minute at 1 psi. Both definitions take water of the same density. */
const perGallon = (gallon: number): number => gallon * 60 * Math.sqrt(1e5 / poundPerSquareInch);
const perUS = perGallon(gallonUS);
const perImperial = perGallon(gallonImperial);

/** Kv of a valve whose Cv is in US gallons a minute at 1 psi: Kv = 0.86498 Cv. Source IEC 60534-1; exact units. */
export const kvFromCvUS = (cv: number): number => cv * perUS;
/** Cv in US gallons a minute at 1 psi, of a valve of known Kv. */
export const cvUSFromKv = (kv: number): number => kv / perUS;
/** Kv of a valve whose Cv is in imperial gallons a minute at 1 psi: Kv = 1.0388 Cv. */
export const kvFromCvImperial = (cv: number): number => cv * perImperial;
/** Cv in imperial gallons a minute at 1 psi, of a valve of known Kv. */
export const cvImperialFromKv = (kv: number): number => kv / perImperial;

/** K = lossFactor D^4 / Kv^2: from dp = K rho v^2/2 = 1e5 rho/1000 (3600 Q/Kv)^2 and v = 4Q/(pi D^2). */
const lossFactor = 200 * 3600 ** 2 * (Math.PI / 4) ** 2;

/**
 * Loss coefficient K, on the velocity in a stated bore, of a part with known Kv.
 *
 * Method   K = 200 (3600 pi/4)^2 D^4/Kv^2 = 1.599e9 D^4/Kv^2
 * Symbols  Kv  kv    scalar  m3/h  > 0
 *          D   bore  scalar  m     > 0
 * Returns  K, ratio
 * Source   definitions of Kv and K, derived
 */
export const kFromKv = (kv: number, bore: number): number => lossFactor * (bore ** 2 / kv) ** 2;
/** Kv of a part with known loss coefficient K on the velocity in a stated bore: the inverse of `kFromKv`. */
export const kvFromK = (k: number, bore: number): number => bore ** 2 * Math.sqrt(lossFactor / k);

/** In which coefficient a valve's paper states it. */
export type CoefficientBasis = 'kv' | 'cv-us' | 'cv-imperial' | 'k';

/**
 * Kv from any of the coefficients in use.
 *
 * Method   by basis: Kv itself, 0.86498 Cv (US), 1.0388 Cv (imperial), or from K on the velocity in the bore
 * Symbols  coefficient  scalar  > 0;  bore  m, used by K only
 * Returns  Kv, m3/h at 1 bar
 * Source   `kvFromCvUS`, `kvFromCvImperial`, `kvFromK`
 */
export const kvFromCoefficient = (coefficient: number, basis: CoefficientBasis, bore: number): number => {
  switch (basis) {
    case 'kv':
      return coefficient;
    case 'cv-us':
      return kvFromCvUS(coefficient);
    case 'cv-imperial':
      return kvFromCvImperial(coefficient);
    case 'k':
      return kvFromK(coefficient, bore);
  }
};

interface ValveCoefficientInputs {
  readonly coefficient: number;
  readonly basis: CoefficientBasis;
  readonly bore: number;
}

export const valveCoefficientSheet = defineSheet({
  id: 'water/valve-coefficient',
  version: 1,
  inputs: {
    coefficient: numberField('ratio', 'C', { least: 1e-6, most: 1e6 }),
    basis: choiceField<CoefficientBasis>('\\text{basis}', ['kv', 'cv-us', 'cv-imperial', 'k'], 'kv'),
    bore: numberField('length', 'D', bores),
  },
  outputs: {
    kv: numberField('flowCoefficient', 'K_v'),
    cvUS: numberField('ratio', 'C_{v,\\mathrm{US}}'),
    cvImperial: numberField('ratio', 'C_{v,\\mathrm{imp}}'),
    k: numberField('ratio', 'K'),
  },
  formula: [
    'K_v = 0.864978\\, C_{v,\\mathrm{US}} = 1.038795\\, C_{v,\\mathrm{imp}}',
    'K = 200 \\left( \\frac{3600 \\pi}{4} \\right)^2 \\frac{D^4}{K_v^2}',
  ],
  limits: [],
  sources: [kvStandard, derived],
  compute: ({ coefficient, basis, bore }: ValveCoefficientInputs) => {
    const kv = kvFromCoefficient(coefficient, basis, bore);
    return { kv, cvUS: cvUSFromKv(kv), cvImperial: cvImperialFromKv(kv), k: kFromKv(kv, bore) };
  },
});

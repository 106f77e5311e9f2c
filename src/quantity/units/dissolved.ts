import { hundred, litre, millionth, minute, one, ounce, pound, thousand, usGallon } from '../constants.ts';
import { product, quotient } from '../ratio.ts';
import { unit } from '../unit.ts';

const milligramInLitre = quotient(millionth, litre);

/** Of a chemical dissolved in water. `ppm` is taken for mg/L, which holds for weak solutions in water only. */
export const soluteConcentrations = [
  unit('mg/L', milligramInLitre, { also: ['ppm', 'mg/dm3', 'mg/l'] }),
  unit('g/L', one, { also: ['g/dm3', 'kg/m3', 'mg/mL'] }),
  unit('ug/L', quotient(milligramInLitre, thousand), { label: 'µg/L', also: ['ppb'] }),
  // a bare per cent would leave open by weight or by volume
  unit('% w/v', quotient(thousand, hundred), { also: ['% (w/v)', 'percent w/v', '%w/v', 'g/100 mL'] }),
  unit('oz/US gal', quotient(ounce, usGallon), { also: ['oz/gal', 'oz/gal (US)'] }),
  unit('lb/US gal', quotient(pound, usGallon), { also: ['lb/gal', 'lb/gal (US)'] }),
];

/** The CT of the water trade: what is left at the end of a time, times that time. */
export const concentrationTimes = [
  unit('mg min/L', product(milligramInLitre, minute), {
    label: 'mg·min/L',
    also: ['mg.min/L', 'mg*min/L', 'mg/L min', 'mg-min/L', 'ppm min'],
  }),
  unit('mg s/L', milligramInLitre, { label: 'mg·s/L', also: ['mg.s/L', 'mg*s/L', 'mg/L s', 'mg-s/L'] }),
  unit('kg s/m3', one, { label: 'kg·s/m³' }),
];

export const inactivationRates = [
  unit('L/(mg s)', quotient(one, milligramInLitre), { label: 'L/(mg·s)', also: ['L/mg/s', 'L/mg s'] }),
  unit('L/(mg min)', quotient(one, product(milligramInLitre, minute)), {
    label: 'L/(mg·min)',
    also: ['L/mg/min', 'L/mg min'],
  }),
  unit('m3/(kg s)', one, { label: 'm³/(kg·s)' }),
];

/** Of an acid that gives one hydrogen ion, `mol/L` and `N` are one. */
export const equivalentConcentrations = [
  unit('N', thousand, { also: ['eq/L', 'mol/L', 'normal'] }),
  unit('meq/L', one, { also: ['mmol/L', 'mN', 'mol/m3'] }),
];

export const acidities = [unit('pH', one, { before: true, also: ['', '1', 'pH ='] })];

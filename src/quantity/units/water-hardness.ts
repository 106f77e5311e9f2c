import { imperialGallon, litre, pound, thousandth, usGallon } from '../constants.ts';
import { exact, product, quotient } from '../ratio.ts';
import { unit } from '../unit.ts';

/** 7000 grains are a pound. */
const grain = quotient(pound, exact('7000'));
const milligramPerLitre = quotient(product(thousandth, thousandth), litre);

/** Molar masses of CaCO3 and CaO, g/mol, from the standard atomic weights of IUPAC: Ca 40.078, C 12.011, O 15.999. */
const carbonate = exact('100.086');
const oxide = exact('56.077');

/** Hardness counted as calcium carbonate, whatever the ions are. */
export const waterHardnesses = [
  unit('mg/L CaCO3', milligramPerLitre, {
    label: 'mg/L CaCO₃',
    also: ['mg/L', 'ppm', 'ppm CaCO3', 'mg/L as CaCO3'],
  }),
  unit('gr/US gal', quotient(grain, usGallon), { also: ['gpg', 'gr/gal', 'grains/gal', 'grains/US gal'] }),
  // 10 mg of CaO in a litre
  unit('dH', product(exact('10'), milligramPerLitre, quotient(carbonate, oxide)), {
    label: '°dH',
    also: ['degdH', 'deg dH', 'German degrees'],
  }),
  // 10 mg of CaCO3 in a litre
  unit('fH', product(exact('10'), milligramPerLitre), {
    label: '°fH',
    also: ['degfH', 'deg fH', 'French degrees', 'TH'],
  }),
  unit('gr/imp gal', quotient(grain, imperialGallon), {
    also: ['Clark', 'deg Clark', 'English degrees', 'dege', 'grains/imp gal'],
  }),
  unit('mmol/L', product(carbonate, thousandth), { also: ['mol/m3'] }),
];

import { foot, millionth, one, thousand, thousandth } from '../constants.ts';
import { exact, product, quotient } from '../ratio.ts';
import { unit } from '../unit.ts';

export const resistancesPerLength = [
  unit('ohm/km', thousandth, { label: 'Ω/km', also: ['mohm/m', 'milliohm/m', 'ohms/km'] }),
  unit('ohm/m', one, { label: 'Ω/m', also: ['ohms/m'] }),
  unit('ohm/kft', quotient(one, product(thousand, foot)), {
    label: 'Ω/1000 ft',
    also: ['ohm/1000 ft', 'ohms/1000 ft', 'ohm/1000ft', 'ohms/kft', 'ohm/Mft'],
  }),
  unit('ohm/ft', quotient(one, foot), { label: 'Ω/ft', also: ['ohms/ft'] }),
];

/** A mil is a thousandth of an inch; a circular mil is the circle of a mil across, hence pi. */
const mil = 0.0254 / 1000;

export const conductorAreas = [
  unit('mm2', millionth, { label: 'mm²', also: ['sq mm', 'mm^2'] }),
  unit('kcmil', 1000 * (Math.PI / 4) * mil * mil, { also: ['MCM', 'kCM'] }),
  unit('cm2', exact('0.0001'), { label: 'cm²' }),
  unit('m2', one, { label: 'm²' }),
];

export const capacitances = [
  unit('uF', millionth, { label: 'µF', also: ['microfarad', 'microfarads'] }),
  unit('nF', exact('0.000000001')),
  unit('mF', thousandth),
  unit('F', one, { also: ['farad', 'farads'] }),
];

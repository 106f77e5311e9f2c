import {
  cubicFoot,
  foot,
  hour,
  imperialGallon,
  inch,
  kilogramForce,
  mile,
  million,
  millionth,
  minute,
  one,
  ounce,
  pound,
  poundForce,
  squareFoot,
  standardGravity,
  thousand,
  thousandth,
  usGallon,
} from '../constants.ts';
import { exact, product, quotient } from '../ratio.ts';
import { unit } from '../unit.ts';

export const masses = [
  unit('kg', one, { also: ['kilogram', 'kilograms', 'kilo'] }),
  unit('g', thousandth, { also: ['gram', 'grams', 'gr.'] }),
  unit('mg', millionth),
  unit('t', thousand, { also: ['tonne', 'tonnes'] }),
  unit('lb', pound, { also: ['lbs', 'lbm', 'pound', 'pounds'] }),
  unit('oz', ounce, { also: ['ounce', 'ounces'] }),
  unit('US ton', product(exact('2000'), pound), { also: ['short ton', 'short tons', 'ton (US)'] }),
];

export const velocities = [
  unit('m/s', one, { also: ['m/sec'] }),
  unit('mm/s', thousandth),
  unit('cm/s', exact('0.01')),
  unit('m/min', quotient(one, minute)),
  unit('km/h', quotient(thousand, hour), { also: ['kph', 'kmh'] }),
  unit('ft/s', foot, { also: ['fps', 'ft/sec'] }),
  unit('ft/min', quotient(foot, minute), { also: ['fpm'] }),
  unit('in/s', inch, { also: ['ips', 'in/sec'] }),
  unit('in/min', quotient(inch, minute), { also: ['ipm'] }),
  unit('mi/h', quotient(mile, hour), { also: ['mph'] }),
];

export const accelerations = [
  unit('m/s2', one, { label: 'm/s²' }),
  unit('ft/s2', foot, { label: 'ft/s²' }),
  unit('gn', standardGravity, { label: 'g', also: ['g0'] }),
];

export const densities = [
  unit('kg/m3', one, { label: 'kg/m³' }),
  unit('kg/L', thousand, { also: ['kg/dm3', 't/m3'] }),
  unit('g/mL', thousand, { also: ['g/cm3', 'g/cc', 'g/ccm'] }),
  unit('g/L', one),
  unit('lb/ft3', quotient(pound, cubicFoot), { label: 'lb/ft³', also: ['lb/cu ft', 'pcf', 'lbm/ft3'] }),
  unit('lb/US gal', quotient(pound, usGallon), { also: ['lb/gal', 'ppg', 'lb/gal (US)'] }),
  unit('lb/imp gal', quotient(pound, imperialGallon), { also: ['lb/gal (imp)', 'lb/UK gal'] }),
];

export const linearDensities = [
  unit('kg/m', one),
  unit('g/m', thousandth),
  unit('lb/ft', quotient(pound, foot)),
  unit('lb/in', quotient(pound, inch)),
];

export const dynamicViscosities = [
  unit('mPa s', thousandth, { also: ['mPa.sec'] }),
  unit('Pa s', one, { also: ['N s/m2', 'kg/(m s)'] }),
  unit('cP', thousandth, { also: ['cps', 'centipoise'] }),
  unit('P', exact('0.1'), { also: ['poise'] }),
  unit('uPa s', millionth, { label: 'µPa s' }),
  unit('lb/(ft s)', quotient(pound, foot), { also: ['lb/ft s'] }),
  unit('lbf s/ft2', quotient(poundForce, squareFoot), { label: 'lbf s/ft²' }),
];

export const kinematicViscosities = [
  unit('mm2/s', millionth, { label: 'mm²/s' }),
  unit('m2/s', one, { label: 'm²/s' }),
  unit('cSt', millionth, { also: ['centistokes'] }),
  unit('St', exact('0.0001'), { also: ['stokes'] }),
  unit('ft2/s', squareFoot, { label: 'ft²/s' }),
];

export const forces = [
  unit('N', one, { also: ['newton', 'newtons'] }),
  unit('daN', exact('10')),
  unit('kN', thousand),
  unit('MN', million),
  unit('lbf', poundForce, { also: ['lb force', 'pound force'] }),
  unit('kgf', kilogramForce, { also: ['kp'] }),
  unit('ozf', quotient(poundForce, exact('16'))),
];

export const torques = [
  unit('N m', one, { label: 'N·m' }),
  unit('N cm', exact('0.01'), { label: 'N·cm' }),
  unit('N mm', thousandth, { label: 'N·mm' }),
  unit('kN m', thousand, { label: 'kN·m' }),
  unit('lbf in', product(poundForce, inch), {
    label: 'lbf·in',
    also: ['in lbf', 'in lb', 'lb in', 'in lbs'],
  }),
  unit('lbf ft', product(poundForce, foot), {
    label: 'lbf·ft',
    also: ['ft lbf', 'ft lb', 'lb ft', 'ft lbs'],
  }),
  unit('ozf in', quotient(product(poundForce, inch), exact('16')), {
    label: 'ozf·in',
    also: ['in ozf', 'in oz', 'oz in'],
  }),
  unit('kgf m', kilogramForce, { label: 'kgf·m', also: ['m kgf', 'kp m'] }),
  unit('kgf cm', product(kilogramForce, exact('0.01')), { label: 'kgf·cm', also: ['cm kgf', 'kp cm'] }),
];

/** A-weighted, over 20 uPa: a logarithm, which no factor makes another unit of. */
export const soundLevels = [unit('dB(A)', one, { also: ['dBA', 'dB A', 'db(a)'] })];

import { bar, cubicFoot, litre, millionth, minute, one, pound, psi, thousandth } from '../constants.ts';
import { exact, product, quotient } from '../ratio.ts';
import { unit } from '../unit.ts';

/** The flow is free air at 100 kPa, 20 degC, the reference of ISO 6358; `N` before the litre is not needed. */
export const sonicConductances = [
  unit('dm3/(s bar)', quotient(litre, bar), {
    label: 'dm³/(s·bar)',
    also: ['L/(s bar)', 'dm3/s/bar', 'L/s/bar', 'dm3/s bar', 'L/s bar'],
  }),
  unit('L/(min bar)', quotient(litre, product(minute, bar)), {
    label: 'L/(min·bar)',
    also: ['dm3/(min bar)', 'L/min/bar', 'dm3/min/bar', 'L/min bar', 'dm3/min bar'],
  }),
  unit('m3/(s Pa)', one, { label: 'm³/(s·Pa)', also: ['m3/s/Pa'] }),
  unit('ft3/(min psi)', quotient(cubicFoot, product(minute, psi)), {
    label: 'ft³/(min·psi)',
    also: ['ft3/min/psi', 'cfm/psi', 'scfm/psi (ANR)'],
  }),
];

/** 7000 grains are a pound. */
const grain = quotient(pound, exact('7000'));

export const humidityRatios = [
  unit('g/kg', thousandth),
  unit('kg/kg', one),
  unit('gr/lb', quotient(grain, pound), { also: ['grains/lb'] }),
  unit('lb/lb', one),
];

export const massConcentrations = [
  unit('g/m3', thousandth, { label: 'g/m³' }),
  unit('mg/m3', millionth, { label: 'mg/m³' }),
  unit('kg/m3', one, { label: 'kg/m³' }),
  unit('gr/ft3', quotient(grain, cubicFoot), { label: 'gr/ft³', also: ['grains/ft3'] }),
];

export const numberConcentrations = [
  unit('/m3', one, { label: '/m³', also: ['1/m3', 'per m3', 'particles/m3', 'counts/m3'] }),
  unit('/L', quotient(one, litre), { also: ['1/L', 'per L', '/dm3'] }),
  unit('/ft3', quotient(one, cubicFoot), { label: '/ft³', also: ['1/ft3', 'particles/ft3'] }),
];

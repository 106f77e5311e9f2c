import {
  btu,
  foot,
  hour,
  inch,
  million,
  one,
  pound,
  poundForce,
  psi,
  squareFoot,
  thousand,
} from '../constants.ts';
import { exact, product, quotient } from '../ratio.ts';
import { unit } from '../unit.ts';

const fahrenheitStep = quotient(exact('5'), exact('9'));
const btuPerHour = quotient(btu, hour);

/** Heat that flows, apart from the power of a shaft: nobody asks a bath's loss in horsepower. */
export const heatFlows = [
  unit('kW', thousand, { also: ['kJ/s'] }),
  unit('W', one, { also: ['watt', 'watts', 'J/s'] }),
  unit('MW', million),
  unit('Btu/h', btuPerHour, { also: ['Btu/hr', 'BTUH'] }),
  unit('MBH', product(thousand, btuPerHour), { also: ['kBtu/h', '1000 Btu/h'] }),
];

export const heatFluxes = [
  unit('W/m2', one, { label: 'W/m²' }),
  unit('kW/m2', thousand, { label: 'kW/m²' }),
  unit('Btu/(h ft2)', quotient(btuPerHour, squareFoot), {
    label: 'Btu/(h·ft²)',
    also: ['Btu/h ft2', 'Btu/(hr ft2)'],
  }),
];

export const heatTransfers = [
  unit('W/K', one, { also: ['W/degC'] }),
  unit('kW/K', thousand),
  unit('Btu/(h degF)', quotient(btuPerHour, fahrenheitStep), {
    label: 'Btu/(h·°F)',
    also: ['Btu/h degF', 'Btu/(hr degF)'],
  }),
];

export const specificHeats = [
  unit('kJ/(kg K)', thousand, { label: 'kJ/(kg·K)', also: ['kJ/kg K', 'J/(g K)', 'kJ/(kg degC)'] }),
  unit('J/(kg K)', one, { label: 'J/(kg·K)', also: ['J/kg K', 'J/(kg degC)'] }),
  unit('Btu/(lb degF)', quotient(btu, product(pound, fahrenheitStep)), {
    label: 'Btu/(lb·°F)',
    also: ['Btu/lb degF', 'Btu/(lbm degF)'],
  }),
];

export const specificEnergies = [
  unit('kJ/kg', thousand),
  unit('J/kg', one),
  unit('MJ/kg', million),
  unit('Btu/lb', quotient(btu, pound), { also: ['Btu/lbm'] }),
];

/** What a foot or a wheel presses on its floor with; neither gauge nor a difference of two pressures. */
export const bearingPressures = [
  unit('kPa', thousand, { also: ['kN/m2'] }),
  unit('MPa', million, { also: ['N/mm2'] }),
  unit('Pa', one, { also: ['N/m2'] }),
  unit('psi', psi, { also: ['lbf/in2', 'lb/in2'] }),
  unit('psf', quotient(poundForce, squareFoot), { also: ['lbf/ft2', 'lb/ft2'] }),
  unit('kgf/cm2', quotient(exact('9.80665'), exact('0.0001')), { label: 'kgf/cm²' }),
  unit('kip/in2', quotient(product(thousand, poundForce), product(inch, inch)), { also: ['ksi'] }),
];

const perFoot = quotient(btuPerHour, product(foot, fahrenheitStep));

export const surfaceCoefficients = [
  unit('W/(m2 K)', one, { label: 'W/(m²·K)', also: ['W/m2 K', 'W/(m2 degC)'] }),
  unit('kW/(m2 K)', thousand, { label: 'kW/(m²·K)', also: ['kW/m2 K'] }),
  unit('Btu/(h ft2 degF)', quotient(perFoot, foot), {
    label: 'Btu/(h·ft²·°F)',
    also: ['Btu/h ft2 degF', 'Btu/(hr ft2 degF)'],
  }),
];

export const thermalConductivities = [
  unit('W/(m K)', one, { label: 'W/(m·K)', also: ['W/m K', 'W/(m degC)'] }),
  unit('Btu/(h ft degF)', perFoot, {
    label: 'Btu/(h·ft·°F)',
    also: ['Btu/h ft degF', 'Btu/(hr ft degF)'],
  }),
];

/** A step of one degree Fahrenheit is five ninths of a kelvin. */
export const cubicExpansions = [
  unit('1/K', one, { also: ['/K', 'K-1', '1/degC', '/degC', '1/C'] }),
  unit('1/degF', quotient(one, fahrenheitStep), { label: '1/°F', also: ['/degF', '1/F', 'degF-1'] }),
];

import {
  btu,
  foot,
  horsepower,
  hour,
  metricHorsepower,
  million,
  millionth,
  minute,
  one,
  poundForce,
  thousand,
  thousandth,
} from '../constants.ts';
import { exact, product, quotient } from '../ratio.ts';
import { unit } from '../unit.ts';

export const energies = [
  unit('kWh', product(thousand, hour), { also: ['kW h', 'kW hr'] }),
  unit('Wh', hour, { also: ['W h'] }),
  unit('MWh', product(million, hour), { also: ['MW h'] }),
  unit('J', one, { also: ['joule', 'joules', 'W s', 'N m'] }),
  unit('kJ', thousand),
  unit('MJ', million),
  unit('Btu', btu, { also: ['Btu (IT)'] }),
  unit('ft lbf', product(foot, poundForce), { label: 'ft·lbf', also: ['ft lb'] }),
];

export const powers = [
  unit('kW', thousand),
  unit('W', one, { also: ['watt', 'watts', 'J/s'] }),
  unit('mW', thousandth),
  unit('MW', million),
  unit('hp', horsepower, { also: ['HP', 'bhp', 'horsepower'] }),
  unit('PS', metricHorsepower, { also: ['metric hp', 'hp (metric)', 'CV', 'pk'] }),
  unit('Btu/h', quotient(btu, hour), { also: ['Btu/hr', 'BTUH'] }),
  unit('ft lbf/s', product(foot, poundForce), { label: 'ft·lbf/s' }),
];

export const apparentPowers = [unit('kVA', thousand), unit('VA', one), unit('MVA', million)];
export const voltages = [
  unit('V', one, { also: ['volt', 'volts', 'V AC', 'V DC', 'Vac', 'Vdc'] }),
  unit('kV', thousand),
  unit('mV', thousandth),
];
export const currents = [
  unit('A', one, { also: ['amp', 'amps', 'ampere', 'amperes'] }),
  unit('mA', thousandth),
  unit('kA', thousand),
];
export const resistances = [
  unit('ohm', one, { label: 'Ω', also: ['ohms'] }),
  unit('mohm', thousandth, { label: 'mΩ', also: ['milliohm', 'milliohms'] }),
  unit('kohm', thousand, { label: 'kΩ' }),
  unit('Mohm', million, { label: 'MΩ', also: ['megohm', 'megohms', 'megaohm'] }),
  unit('Gohm', exact('1000000000'), { label: 'GΩ' }),
];
export const conductivities = [
  unit('uS/cm', exact('0.0001'), { label: 'µS/cm', also: ['umho/cm', 'micromho/cm'] }),
  unit('mS/cm', exact('0.1'), { also: ['mmho/cm'] }),
  unit('mS/m', thousandth),
  unit('S/m', one),
  unit('uS/m', millionth, { label: 'µS/m' }),
];

const kelvinsOfZeroCelsius = 273.15;
const rankinesOfZeroFahrenheit = 459.67;
const perRankine = quotient(exact('5'), exact('9'));

export const temperatures = [
  unit('degC', one, {
    label: '°C',
    offset: kelvinsOfZeroCelsius,
    also: ['C', 'deg C', 'Celsius', 'degrees C'],
  }),
  unit('degF', perRankine, {
    label: '°F',
    offset: rankinesOfZeroFahrenheit,
    also: ['F', 'deg F', 'Fahrenheit', 'degrees F'],
  }),
  unit('K', one, { also: ['kelvin', 'kelvins', 'deg K'] }),
];

export const temperatureDifferences = [
  unit('K', one, { also: ['kelvin', 'kelvins', 'deg K'] }),
  unit('degC', one, { label: '°C', also: ['C', 'deg C', 'Celsius', 'degrees C'] }),
  unit('degF', perRankine, { label: '°F', also: ['F', 'deg F', 'Fahrenheit', 'degrees F'] }),
];

export const times = [
  unit('s', one, { also: ['sec', 'secs', 'second', 'seconds'] }),
  unit('ms', thousandth, { also: ['msec', 'millisecond', 'milliseconds'] }),
  unit('us', millionth, { label: 'µs' }),
  unit('min', minute, { also: ['mins', 'minute', 'minutes'] }),
  unit('h', hour, { also: ['hr', 'hrs', 'hour', 'hours'] }),
  unit('d', product(hour, exact('24')), { also: ['day', 'days'] }),
];

// 365 days: the year of ISO 13849-1, whose table K.1 is 1/(8760 h) at one year
export const lifetimes = [
  unit('y', product(hour, exact('8760')), { also: ['yr', 'yrs', 'year', 'years', 'a'] }),
  unit('h', hour, { also: ['hr', 'hrs', 'hour', 'hours'] }),
  unit('d', product(hour, exact('24')), { also: ['day', 'days'] }),
];

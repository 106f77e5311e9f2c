import {
  bar,
  cubicFoot,
  day,
  hour,
  imperialGallon,
  litre,
  millionth,
  minute,
  one,
  pound,
  psi,
  thousand,
  thousandth,
  usGallon,
} from '../constants.ts';
import { asPair, exact, product, quotient } from '../ratio.ts';
import { unit } from '../unit.ts';

const minuteWords = (volume: string) => [`${volume}/min`, `${volume}/minute`, `${volume}/mn`];
const hourWords = (volume: string) => [`${volume}/h`, `${volume}/hr`, `${volume}/hour`];
const secondWords = (volume: string) => [`${volume}/s`, `${volume}/sec`, `${volume}/second`];
const spelled = (words: (volume: string) => readonly string[], ...volumes: readonly string[]) =>
  volumes.flatMap(words);

const usNames = ['US gal', 'gal', 'gallon', 'gallons', 'US gallon', 'US gallons', 'gal (US)'] as const;
const imperialNames = [
  'imp gal',
  'UK gal',
  'gal (imp)',
  'gal (UK)',
  'gal imp',
  'imperial gal',
  'imperial gallon',
  'imperial gallons',
] as const;

/** Flows of any fluid at its own state: liquids, and air as it passes. */
const actual = [
  unit('m3/h', quotient(one, hour), { label: 'm³/h', also: [...hourWords('m3'), 'cbm/h'] }),
  unit('m3/min', quotient(one, minute), { label: 'm³/min', also: minuteWords('m3') }),
  unit('m3/s', one, { label: 'm³/s', also: secondWords('m3') }),
  unit('L/min', quotient(litre, minute), {
    also: [...spelled(minuteWords, 'L', 'dm3', 'litres', 'liters', 'ltr'), 'lpm'],
  }),
  unit('L/s', litre, { also: [...spelled(secondWords, 'L', 'dm3', 'litres', 'liters', 'ltr'), 'lps'] }),
  unit('L/h', quotient(litre, hour), {
    also: [...spelled(hourWords, 'L', 'dm3', 'litres', 'liters', 'ltr'), 'lph'],
  }),
  unit('ft3/min', quotient(cubicFoot, minute), {
    label: 'ft³/min',
    also: [...minuteWords('cu ft'), 'cfm', 'ft3/minute'],
  }),
  unit('ft3/s', cubicFoot, { label: 'ft³/s', also: [...secondWords('cu ft'), 'cfs'] }),
];

export const volumeFlows = [
  ...actual,
  unit('hL/h', quotient(exact('0.1'), hour), { also: hourWords('hL') }),
  unit('mL/s', millionth, { also: spelled(secondWords, 'cm3', 'cc', 'mL') }),
  unit('mL/min', quotient(millionth, minute), { also: spelled(minuteWords, 'cm3', 'cc', 'mL') }),
  unit('US gal/min', quotient(usGallon, minute), {
    also: [...spelled(minuteWords, ...usNames), 'gpm', 'US gpm', 'gpm (US)', 'gpm US'],
  }),
  unit('US gal/h', quotient(usGallon, hour), {
    also: [...spelled(hourWords, ...usNames), 'gph', 'US gph', 'gph (US)'],
  }),
  unit('US gal/d', quotient(usGallon, day), { also: ['gpd', 'gal/d', 'gal/day', 'US gal/day', 'US gpd'] }),
  unit('imp gal/min', quotient(imperialGallon, minute), {
    also: [
      ...spelled(minuteWords, ...imperialNames),
      'imp gpm',
      'igpm',
      'gpm (imp)',
      'gpm imp',
      'UK gpm',
      'gpm (UK)',
      'imperial gpm',
    ],
  }),
  unit('imp gal/h', quotient(imperialGallon, hour), {
    also: [...spelled(hourWords, ...imperialNames), 'imp gph', 'gph (imp)', 'UK gph', 'gph (UK)'],
  }),
];

/** Air at the pressure and temperature that it has: `acfm`, or a bare flow. */
export const actualAirFlows = actual.map((each) =>
  each.id === 'ft3/min' ? { ...each, also: [...each.also, 'acfm', 'icfm'] } : each,
);

export const massFlows = [
  unit('kg/s', one, { also: ['kg/sec'] }),
  unit('kg/min', quotient(one, minute)),
  unit('kg/h', quotient(one, hour), { also: ['kg/hr', 'kg/hour'] }),
  unit('g/s', thousandth),
  unit('g/min', quotient(thousandth, minute)),
  unit('t/h', quotient(thousand, hour), { also: ['t/hr'] }),
  unit('lb/s', pound, { also: ['lb/sec', 'lbm/s'] }),
  unit('lb/min', quotient(pound, minute), { also: ['lbm/min', 'lbs/min'] }),
  unit('lb/h', quotient(pound, hour), { also: ['lb/hr', 'lbm/h', 'lbs/h', 'lbs/hr', 'pph'] }),
];

// Kv is m3/h at 1 bar, Cv gallons a minute at 1 psi; flow goes with the root of the loss:
// Kv/Cv = (gallon/min in m3/h) sqrt(bar/psi). IEC 60534-1 rounds the US one to 0.865.
const [perBar, perPsi] = asPair(quotient(bar, psi));
const rootOfBarInPsi = Math.sqrt(perBar / perPsi);
const inCubicMetresAnHour = (gallon: typeof usGallon): number => {
  const [times, over] = asPair(product(quotient(gallon, minute), hour));
  return times / over;
};

export const flowCoefficients = [
  unit('Kv', one, { before: true, also: ['Kvs', 'Kv =', 'Kvs =', 'm3/h', 'm3/hr'] }),
  unit('Cv', inCubicMetresAnHour(usGallon) * rootOfBarInPsi, {
    before: true,
    also: ['Cv =', 'Cv US', 'Cv (US)', 'Cv = US'],
  }),
  unit('Cv imp', inCubicMetresAnHour(imperialGallon) * rootOfBarInPsi, {
    label: 'Cv (imp)',
    before: true,
    also: ['Cv (imp)', 'Cv UK', 'Cv (UK)', 'Cv = imp', 'imp Cv'],
  }),
];

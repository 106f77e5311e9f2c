import { hour, hundred, million, millionth, minute, one, thousand, thousandth } from '../constants.ts';
import { exact, product, quotient } from '../ratio.ts';
import { type Unit, unit } from '../unit.ts';

const things = [
  '1',
  'bottle',
  'bottles',
  'btl',
  'btls',
  'b',
  'flagon',
  'flagons',
  'row',
  'rows',
  'start',
  'starts',
  'cycle',
  'cycles',
  'index',
  'indexes',
  'stroke',
  'strokes',
  'pcs',
  'pieces',
  'units',
  'caps',
] as const;

// What is counted is the name of the field, not of the unit: `1050 bottles/h` and `1050/h` are one rate.
const counted = (each: Unit, ends: readonly string[], short: readonly string[]): Unit => ({
  ...each,
  also: [...ends, ...ends.flatMap((end) => things.map((thing) => thing + end)), ...short],
});

export const rates = [
  counted(unit('/h', quotient(one, hour)), ['/hr', '/hour', '/h'], ['bph', 'h-1', 'an hour']),
  counted(unit('/min', quotient(one, minute)), ['/minute', '/min'], ['bpm', 'cpm', 'min-1', 'a minute']),
  counted(unit('/s', one), ['/sec', '/second', '/s'], ['s-1', 'Hz']),
  counted(unit('/d', quotient(one, exact('86400'))), ['/day', '/d'], []),
];

export const failureRates = [
  unit('/h', quotient(one, hour), { also: ['1/h', 'h-1', 'per hour', '/hour'] }),
  unit('FIT', quotient(quotient(one, hour), product(thousand, million))),
];

export const frequencies = [
  unit('Hz', one, { also: ['/s', '1/s', 's-1', 'cps', 'hertz'] }),
  unit('kHz', thousand),
  unit('mHz', thousandth),
];

export const rotationalSpeeds = [
  unit('rpm', quotient(one, minute), {
    also: ['/min', '1/min', 'min-1', 'rev/min', 'r/min', 'revs/min', 'U/min', 'tr/min'],
  }),
  unit('rev/s', one, { also: ['/s', '1/s', 's-1', 'r/s', 'rps'] }),
  // irrational: a turn is 2 pi radians
  unit('rad/s', 1 / (2 * Math.PI)),
];

export const angles = [
  unit('deg', Math.PI / 180, { label: '°', also: ['degree', 'degrees'] }),
  unit('rad', one, { also: ['radian', 'radians'] }),
  unit('mrad', thousandth),
  unit('rev', 2 * Math.PI, { also: ['turn', 'turns', 'revolution', 'revolutions'] }),
];

export const ratios = [
  unit('', one, { also: ['1'] }),
  unit('%', quotient(one, hundred), { also: ['percent', 'per cent', 'pct'] }),
  unit('mm/m', thousandth),
];

export const counts = [unit('', one)];

// A bare number would leave open whether 2 is two per cent or twice the whole, so these want their unit.
export const massFractions = [
  unit('%', quotient(one, hundred), {
    also: ['percent', 'per cent', 'pct', '% w/w', '% (m/m)', '% wt', 'wt %'],
  }),
  unit('g/kg', thousandth),
  unit('mg/kg', millionth, { also: ['ppm'] }),
  unit('kg/kg', one),
];

export const relativeHumidities = [
  unit('%', quotient(one, hundred), {
    also: ['% rh', '% r.h.', 'percent', 'per cent', 'pct', '% relative humidity'],
  }),
];

import {
  cubicFoot,
  cubicInch,
  foot,
  imperialGallon,
  inch,
  litre,
  millionth,
  one,
  squareFoot,
  squareInch,
  thousand,
  thousandth,
  usGallon,
  yard,
} from '../constants.ts';
import { exact, product, quotient } from '../ratio.ts';
import { unit } from '../unit.ts';

export const lengths = [
  unit('m', one, { also: ['metre', 'metres', 'meter', 'meters'] }),
  unit('mm', thousandth, { also: ['millimetre', 'millimetres', 'millimeter', 'millimeters'] }),
  unit('cm', exact('0.01'), { also: ['centimetre', 'centimetres', 'centimeter', 'centimeters'] }),
  unit('um', millionth, { label: 'µm', also: ['micron', 'microns', 'micrometre', 'micrometer'] }),
  unit('km', thousand),
  unit('in', inch, { also: ['"', 'inch', 'inches', "''"] }),
  unit('ft', foot, { also: ["'", 'foot', 'feet'] }),
  unit('yd', yard, { also: ['yard', 'yards'] }),
];

export const areas = [
  unit('m2', one, { label: 'm²', also: ['sq m'] }),
  unit('cm2', exact('0.0001'), { label: 'cm²', also: ['sq cm'] }),
  unit('mm2', millionth, { label: 'mm²', also: ['sq mm'] }),
  unit('in2', squareInch, { label: 'in²', also: ['sq in'] }),
  unit('ft2', squareFoot, { label: 'ft²', also: ['sq ft'] }),
];

/** Volumes that need no further word; also the numerators of the flows. */
export const volumes = [
  unit('m3', one, { label: 'm³', also: ['cu m', 'cbm'] }),
  unit('L', litre, { also: ['dm3', 'litre', 'litres', 'liter', 'liters', 'ltr'] }),
  unit('mL', millionth, {
    also: ['cm3', 'cc', 'ccm', 'millilitre', 'millilitres', 'milliliter', 'milliliters'],
  }),
  unit('cL', exact('0.00001')),
  unit('hL', exact('0.1'), { also: ['hectolitre', 'hectolitres', 'hectoliter', 'hectoliters'] }),
  unit('US gal', usGallon, {
    also: ['gal', 'gals', 'gallon', 'gallons', 'gal (US)', 'US gallon', 'US gallons', 'gal US', 'USG'],
  }),
  unit('imp gal', imperialGallon, {
    also: [
      'gal (imp)',
      'gal imp',
      'imp gallon',
      'imp gallons',
      'imperial gal',
      'imperial gallon',
      'imperial gallons',
      'UK gal',
      'gal (UK)',
      'gal UK',
      'UK gallon',
      'UK gallons',
    ],
  }),
  unit('US qt', quotient(usGallon, exact('4')), {
    also: ['qt', 'quart', 'quarts', 'qt (US)', 'US quart', 'US quarts'],
  }),
  unit('US pt', quotient(usGallon, exact('8')), {
    also: ['pt', 'pint', 'pints', 'pt (US)', 'US pint', 'US pints'],
  }),
  unit('US fl oz', quotient(usGallon, exact('128')), {
    also: ['fl oz', 'fl oz (US)', 'fluid ounce', 'fluid ounces'],
  }),
  unit('imp pt', quotient(imperialGallon, exact('8')), {
    also: ['pt (imp)', 'UK pt', 'imperial pint', 'imp pint'],
  }),
  unit('imp fl oz', quotient(imperialGallon, exact('160')), { also: ['fl oz (imp)', 'UK fl oz'] }),
  unit('in3', cubicInch, { label: 'in³', also: ['cu in'] }),
  unit('ft3', cubicFoot, { label: 'ft³', also: ['cu ft', 'cf'] }),
];

/** Pulses in a volume: the turned-round volumes a meter's maker prints. */
export const pulseDensities = [
  unit('/L', thousand),
  unit('/mL', product(thousand, thousand), { also: ['/cm3', '/cc'] }),
  unit('/m3', one, { label: '/m³' }),
  unit('/US gal', quotient(one, usGallon), { also: ['/gal', '/gallon', '/gal (US)'] }),
  unit('/imp gal', quotient(one, imperialGallon), { also: ['/gal (imp)', '/UK gal', '/imperial gallon'] }),
].map((each) => ({
  ...each,
  also: [each.id, ...each.also].flatMap((per) => [
    ...['pulse', 'pulses', 'imp', 'impulses', 'counts', 'p', '1', 'K', 'K ='].map((word) => word + per),
    ...each.also,
  ]),
}));

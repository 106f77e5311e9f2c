import type { Book } from '../book.ts';
import { assumed } from './question.ts';

/** Tags of the two floors of a first book. */
export const builtOn = 'BUILDER';
export const boundFor = 'SITE';

/** Places in the line of a first book, by what stands there. */
export const places = {
  washer: '/line/stations/0',
  way: '/line/stations/1',
  fill: '/line/stations/2',
  closing: '/line/stations/3',
  format: '/line/formats/0',
  product: '/line/products/0',
  builder: '/floors/0',
  site: '/floors/1',
} as const;

/**
 * The line and the two floors before anything has been answered. What stands in it is common practice for a small
 * indexing line and marked as assumed, so that every figure says so and the answer is as wide as that is.
 */
export const blankLine: Book = {
  twinfloor: 1,
  about: { title: 'New line' },
  agreement: {},
  line: {
    products: [
      {
        tag: 'PRODUCT',
        name: 'Product',
        properties: 'water',
        fillTemperature: assumed('12 degC'),
      },
      { tag: 'WATER', name: 'Water', properties: 'water' },
    ],
    formats: [{ tag: 'BOTTLE', name: 'Bottle', product: 'PRODUCT' }],
    stations: [
      { tag: '+WASH', kind: 'washer', name: 'washer', stroke: assumed('2 s') },
      { tag: '+WAY', kind: 'discharge', name: 'to the filler', time: assumed('1.5 s') },
      {
        tag: '+FILL',
        kind: 'fill',
        name: 'fill',
        travelIn: assumed('1 s'),
        lift: assumed('0.6 s'),
        drip: assumed('0.4 s'),
        lower: assumed('0.5 s'),
        clearOut: assumed('1 s'),
        manifoldHeight: assumed('1.4 m'),
        mouthHeight: assumed('1.3 m'),
      },
      { tag: '+CAP', kind: 'closing', name: 'cap' },
    ],
    holdRules: [{ tag: 'HR1', holds: '+WASH', while: '+FILL', until: 'release' }],
  },
  floors: [
    {
      tag: builtOn,
      name: 'Our floor',
      role: 'built on',
      liquid: { product: 'WATER', temperature: assumed('15 degC') },
    },
    {
      tag: boundFor,
      name: 'The site',
      role: 'bound for',
      liquid: { product: 'PRODUCT' },
    },
  ],
};

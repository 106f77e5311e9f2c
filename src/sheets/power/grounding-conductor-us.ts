import { choiceField, numberField } from '../fields.ts';
import type { Source } from '../frame.ts';
import { defineSheet } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
import { always, caution } from './caution.ts';

const groundingTable: Source = {
  title: 'NEC table 250.122 (250-95 of older editions)',
  edition: 'before 1999',
  place: 'copper rows, public transcription',
  mark: 'read',
};

/** Greatest rating of the device in A, smallest copper conductor. */
const rows: readonly (readonly [number, string])[] = [
  [15, '14 AWG'],
  [20, '12 AWG'],
  [60, '10 AWG'],
  [100, '8 AWG'],
  [200, '6 AWG'],
  [300, '4 AWG'],
  [400, '3 AWG'],
  [500, '2 AWG'],
  [600, '1 AWG'],
  [800, '1/0 AWG'],
];
export const groundingSizes: readonly string[] = rows.map(([, size]) => size);

/**
 * Smallest copper equipment grounding conductor behind a device.
 *
 * Method   first row whose rating is not under that of the device
 * Symbols  rating  scalar  A
 * Returns  size; undefined over 800 A
 * Cost     O(rows)
 * Source   NEC table 250.122
 */
export const groundingConductorUs = (rating: number): string | undefined =>
  rows.find(([most]) => rating <= most)?.[1];

export const groundingConductorUsSheet = defineSheet({
  id: 'power/grounding-conductor-us',
  version: 1,
  inputs: { rating: numberField('current', 'I_n', { least: 1, most: 6000 }) },
  outputs: { size: choiceField('\\text{size}', groundingSizes) },
  formula: ['\\text{size} = \\text{table}( \\min \\{ r \\ge I_n \\} )'],
  limits: [caution, always('NEC_250_122')],
  sources: [groundingTable],
  check: ({ rating }) =>
    groundingConductorUs(rating) === undefined
      ? [beyondTable('rating', rating, '<= 800', groundingTable)]
      : [],
  compute: ({ rating }: { readonly rating: number }) => ({ size: groundingConductorUs(rating)! }),
});

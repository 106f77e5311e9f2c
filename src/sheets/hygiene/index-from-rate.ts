import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { oneOrMore } from './bounds.ts';
import { derived } from './sources.ts';
import { wholeProblems } from './whole.ts';

/**
 * Index at which a machine of so many lanes makes a rate.
 *
 * Method   tau = L/R
 * Symbols  L  lanes  count        bottles moved by an index, >= 1
 *          R  rate   scalar  1/s  > 0
 * Returns  index, s
 * Cost     O(1)
 * Source   definition
 */
export const indexFromRate = (lanes: number, rate: number): number => lanes / rate;

export const indexFromRateSheet = defineSheet({
  id: 'hygiene/index-from-rate',
  version: 1,
  inputs: {
    lanes: numberField('count', 'L', oneOrMore),
    rate: numberField('rate', 'R', { least: 1e-5, most: 100 }),
  },
  outputs: { index: numberField('time', '\\tau') },
  formula: ['\\tau = \\frac{L}{R}'],
  limits: [{ code: 'INDEX_NOMINAL', broken: () => true }],
  sources: [derived],
  check: ({ lanes }) => wholeProblems({ lanes }),
  compute: (i: { readonly lanes: number; readonly rate: number }) => ({
    index: indexFromRate(i.lanes, i.rate),
  }),
});

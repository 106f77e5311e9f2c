import { numberField } from '../fields.ts';
import type { Source } from '../frame.ts';
import { defineSheet } from '../frame.ts';
import { powers } from './bounds.ts';
import { always, caution } from './caution.ts';

const deratingTable: Source = {
  title: 'NEMA MG 1, derating by voltage unbalance',
  place: 'curve as tabulated on a public page; other readings differ by 0.02',
  mark: 'read',
};

/** Unbalance, factor. */
const rows: readonly (readonly [number, number])[] = [
  [0, 1],
  [0.01, 1],
  [0.015, 0.97],
  [0.02, 0.95],
  [0.025, 0.93],
  [0.03, 0.89],
  [0.035, 0.85],
  [0.04, 0.82],
  [0.045, 0.78],
  [0.05, 0.76],
];

/**
 * Share of its rating that a motor may give on an unbalanced supply.
 *
 * Method   straight between the rows of the tabulated curve
 * Symbols  unbalance  ratio  NEMA, 0 to 0.05
 * Returns  ratio; undefined over 5 %, where a motor is not to be run
 * Cost     O(rows)
 * Source   NEMA MG 1, tabulated
 */
export const deratingFactor = (unbalance: number): number | undefined => {
  const next = rows.findIndex(([share]) => unbalance <= share);
  if (next < 0) return undefined;
  const [highShare, highFactor] = rows[next]!;
  const [lowShare, lowFactor] = rows[next - 1] ?? [0, 1];
  return highShare === lowShare
    ? highFactor
    : lowFactor + ((unbalance - lowShare) / (highShare - lowShare)) * (highFactor - lowFactor);
};

interface UnbalanceDeratingInputs {
  readonly unbalance: number;
  readonly power: number;
}

export const unbalanceDeratingSheet = defineSheet({
  id: 'power/unbalance-derating',
  version: 1,
  inputs: {
    unbalance: numberField('ratio', 'u', { least: 0, most: 1 }),
    power: numberField('power', 'P_N', powers),
  },
  outputs: {
    factor: numberField('ratio', 'k'),
    power: numberField('power', 'P'),
  },
  formula: ['k = \\text{curve}(u), \\quad P = k\\, P_N'],
  limits: [
    caution,
    always('DERATING_READ_FROM_CURVE'),
    { code: 'UNBALANCE_OVER_1', broken: ({ unbalance }) => unbalance > 0.01 },
  ],
  sources: [deratingTable],
  check: ({ unbalance }) =>
    deratingFactor(unbalance) === undefined
      ? [{ code: 'UNBALANCE_DO_NOT_RUN', path: 'unbalance', given: unbalance, allowed: '<= 5 %' }]
      : [],
  compute: (i: UnbalanceDeratingInputs) => {
    const factor = deratingFactor(i.unbalance)!;
    return { factor, power: factor * i.power };
  },
});

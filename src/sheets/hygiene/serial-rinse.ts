import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { carries, concentrations, sharesAboveZero, stages, waters } from './bounds.ts';
import { always, chemicalCaution } from './caution.ts';
import { serialShare } from './rinse-chain.ts';
import { derived, rinseArticle } from './sources.ts';
import { wholeProblems } from './whole.ts';

interface SerialInputs {
  readonly start: number;
  readonly carry: number;
  readonly fresh: number;
  readonly stages: number;
  readonly mixing: number;
}

export const serialRinseSheet = defineSheet({
  id: 'hygiene/serial-rinse',
  version: 1,
  inputs: {
    start: numberField('soluteConcentration', 'c_0', concentrations),
    carry: numberField('volume', 'v', carries),
    fresh: numberField('volume', 'q', waters),
    stages: numberField('count', 'n', stages),
    mixing: numberField('ratio', 'e', { ...sharesAboveZero, assumed: 1 }),
  },
  outputs: {
    left: numberField('soluteConcentration', 'c_n'),
    ratio: numberField('ratio', 'c_0 / c_n'),
    water: numberField('volume', 'n q'),
  },
  formula: ['c_n = c_0 \\left( \\frac{v}{v + e q} \\right)^n'],
  limits: [
    { code: 'RINSE_NO_WATER', broken: ({ fresh }) => fresh === 0 },
    { code: 'PERFECT_MIXING', broken: ({ mixing }) => mixing > 0.8 },
    always('WEIGH_TWENTY'),
    chemicalCaution,
  ],
  sources: [derived, rinseArticle],
  check: ({ stages: n }) => wholeProblems({ stages: n }),
  compute: ({ start, carry, fresh, stages: n, mixing }: SerialInputs) => {
    const share = serialShare(carry, fresh, n, mixing);
    return { left: start * share, ratio: 1 / share, water: n * fresh };
  },
});

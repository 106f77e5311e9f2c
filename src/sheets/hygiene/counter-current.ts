import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { carries, concentrations, sharesAboveZero, stages, waters } from './bounds.ts';
import { always, chemicalCaution } from './caution.ts';
import { counterShare } from './rinse-chain.ts';
import { derived, rinseArticle } from './sources.ts';
import { wholeProblems } from './whole.ts';

interface CounterInputs {
  readonly start: number;
  readonly carry: number;
  readonly fresh: number;
  readonly stages: number;
  readonly mixing: number;
}

export const counterCurrentSheet = defineSheet({
  id: 'hygiene/counter-current',
  version: 1,
  inputs: {
    start: numberField('soluteConcentration', 'c_0', concentrations),
    carry: numberField('volume', 'v', carries),
    fresh: numberField('volume', 'Q', waters),
    stages: numberField('count', 'n', stages),
    mixing: numberField('ratio', 'e', { ...sharesAboveZero, assumed: 1 }),
  },
  outputs: {
    left: numberField('soluteConcentration', 'c_n'),
    ratio: numberField('ratio', 'c_0 / c_n'),
    rinseRatio: numberField('ratio', 'r'),
  },
  formula: [
    '\\frac{c_0}{c_n} = \\frac{r^{n+1} - 1}{r - 1} = 1 + r + \\dots + r^n, \\quad r = \\frac{e Q}{v}',
  ],
  limits: [
    { code: 'RINSE_NO_WATER', broken: ({ fresh }) => fresh === 0 },
    { code: 'PERFECT_MIXING', broken: ({ mixing }) => mixing > 0.8 },
    always('WEIGH_TWENTY'),
    always('RINSE_NEVER_UPSTREAM'),
    chemicalCaution,
  ],
  sources: [derived, rinseArticle],
  check: ({ stages: n }) => wholeProblems({ stages: n }),
  compute: ({ start, carry, fresh, stages: n, mixing }: CounterInputs) => {
    const share = counterShare(carry, fresh, n, mixing);
    return { left: start * share, ratio: 1 / share, rinseRatio: (mixing * fresh) / carry };
  },
});

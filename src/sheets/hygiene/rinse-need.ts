import { brentRoot } from '../brent-root.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { carries, sharesAboveZero, stages } from './bounds.ts';
import { always, chemicalCaution } from './caution.ts';
import { counterShare, serialShare } from './rinse-chain.ts';
import { derived, rinseShortcut } from './sources.ts';
import { wholeProblems } from './whole.ts';

type Share = (carry: number, fresh: number, stages: number, mixing: number) => number;

/**
 * Fresh water over carried liquid at which a chain of rinses reaches a dilution.
 *
 * Method   root of ln(share) + ln(ratio); one rinse alone asks ratio - 1, and more rinses never ask more
 * Symbols  share   `serialShare` or `counterShare`
 *          ratio   scalar  >= 1
 *          stages  count
 * Returns  ratio of volumes that mix
 * Cost     some ten calls
 * Source   the chain itself
 */
const rinseRatio = (share: Share, ratio: number, n: number): number =>
  ratio === 1 ? 0 : brentRoot((r) => Math.log(share(1, r, n, 1)) + Math.log(ratio), 0, ratio, 1e-14 * ratio);

interface NeedInputs {
  readonly ratio: number;
  readonly carry: number;
  readonly stages: number;
  readonly mixing: number;
}

export const rinseNeedSheet = defineSheet({
  id: 'hygiene/rinse-need',
  version: 1,
  inputs: {
    ratio: numberField('ratio', 'c_0 / c_n', { least: 1, most: 1e9 }),
    carry: numberField('volume', 'v', carries),
    stages: numberField('count', 'n', stages),
    mixing: numberField('ratio', 'e', { ...sharesAboveZero, least: 0.01, assumed: 1 }),
  },
  outputs: {
    counterRatio: numberField('ratio', 'r'),
    counterWater: numberField('volume', 'Q'),
    serialWater: numberField('volume', 'n q'),
    shortcut: numberField('ratio', 'r_1'),
    longerShortcut: numberField('ratio', 'r_2'),
  },
  formula: [
    'Q : \\frac{c_0}{c_n} = 1 + r + \\dots + r^n, \\quad r = \\frac{e Q}{v}',
    'q : \\frac{c_0}{c_n} = \\left( 1 + \\frac{e q}{v} \\right)^n',
    'r_1 = \\left( \\frac{c_0}{c_n} \\right)^{1/n}, \\quad r_2 = r_1 + \\frac{1}{n}',
  ],
  limits: [
    { code: 'PERFECT_MIXING', broken: ({ mixing }) => mixing > 0.8 },
    always('RINSE_SHORTCUTS'),
    always('WEIGH_TWENTY'),
    chemicalCaution,
  ],
  sources: [derived, rinseShortcut],
  check: ({ stages: n }) => wholeProblems({ stages: n }),
  compute: ({ ratio, carry, stages: n, mixing }: NeedInputs) => {
    const counter = rinseRatio(counterShare, ratio, n);
    const shortcut = ratio ** (1 / n);
    return {
      counterRatio: counter,
      counterWater: (counter * carry) / mixing,
      serialWater: (n * rinseRatio(serialShare, ratio, n) * carry) / mixing,
      shortcut,
      longerShortcut: shortcut + 1 / n,
    };
  },
});

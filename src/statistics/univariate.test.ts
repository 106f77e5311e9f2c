import { describe, expect, it } from 'vitest';
import { digits } from './testing/digits.ts';
import { univariateSets } from './testing/strd-univariate.ts';
import { univariate } from './univariate.ts';

/**
 * What NumAcc3 and NumAcc4 certify is of decimal fractions; the numbers of a machine that stand next to them have
 * another standard deviation and autocorrelation from the tenth and the ninth digit on. These are theirs, in exact
 * arithmetic by mpmath 1.3 with 40 digits.
 */
const ofStored: Record<string, { sd: number; lag1: number; certified: number }> = {
  NumAcc3: { sd: 0.1000000000349246, lag1: -0.9989999999994185, certified: 9 },
  NumAcc4: { sd: 0.10000000055879354, lag1: -0.9989999999906961, certified: 8 },
};

describe.each(univariateSets)('NIST StRD univariate, $name', ({ name, values, mean, sd, lag1 }) => {
  const summary = univariate(values);
  const stored = ofStored[name];

  it('mean, standard deviation and lag-1 autocorrelation are met to 12 digits', () => {
    expect(digits(summary.mean, mean)).toBeGreaterThan(14);
    expect(digits(summary.sd!, stored?.sd ?? sd)).toBeGreaterThan(12);
    expect(digits(summary.lag1!, stored?.lag1 ?? lag1)).toBeGreaterThan(12);
  });

  it('the certified figures are met as far as a machine number can hold the data', () => {
    expect(digits(summary.sd!, sd)).toBeGreaterThan(stored?.certified ?? 12);
    expect(digits(summary.lag1!, lag1)).toBeGreaterThan(stored?.certified ?? 12);
  });
});

it('one value has a mean and no spread', () => {
  expect(univariate([3])).toEqual({ mean: 3, sd: undefined, lag1: undefined });
});

it('equal values have no autocorrelation', () => {
  expect(univariate([0.1, 0.1, 0.1])).toEqual({ mean: 0.1, sd: 0, lag1: undefined });
});

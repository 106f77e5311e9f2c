import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { lifetimes } from './bounds.ts';
import { guardingCaution } from './caution.ts';
import { iso13849 } from './sources.ts';

/** Tests that category 2 wants for each demand, and the share of the logic's lifetime that its tester must pass. */
const testsWanted = 100;
const testerShare = 0.5;
// intervals that are typed in different units leave a last bit
const rounding = 1e-9;

interface TestRateInputs {
  readonly demandEvery: number;
  readonly testEvery: number;
  readonly logic: number;
  readonly tester: number;
}

/**
 * What category 2 asks of its test: often enough, by equipment that lasts.
 *
 * Method   n = T_demand/T_test, at least 100;  M_TE/M_L, above 1/2
 * Symbols  T_demand  demandEvery  scalar  s  mean time between two demands
 *          T_test    testEvery    scalar  s
 *          M_L       logic        scalar  s  mean time to a dangerous failure of the logic
 *          M_TE      tester       scalar  s  of the test equipment
 * Returns  tests for each demand; share of the logic's lifetime; longest interval of the test, s
 * Cost     O(1)
 * Source   ISO 13849-1:2006 4.5.4
 */
export const testRate = ({ demandEvery, testEvery, logic, tester }: TestRateInputs) => ({
  tests: demandEvery / testEvery,
  share: tester / logic,
  longestInterval: demandEvery / testsWanted,
});

const intervals = { least: 1e-3, most: 3.2e9 } as const;

export const testRateSheet = defineSheet({
  id: 'safety/test-rate',
  version: 1,
  inputs: {
    demandEvery: numberField('time', 'T_d', intervals),
    testEvery: numberField('time', 'T_t', intervals),
    logic: numberField('lifetime', 'M_L', lifetimes),
    tester: numberField('lifetime', 'M_{TE}', lifetimes),
  },
  outputs: {
    tests: numberField('ratio', 'n'),
    longestInterval: numberField('time', 'T_{t,\\max}'),
    share: numberField('ratio', 's'),
  },
  formula: [
    'n = \\frac{T_d}{T_t} \\ge 100, \\quad T_{t,\\max} = \\frac{T_d}{100}, \\quad s = \\frac{M_{TE}}{M_L} > \\frac{1}{2}',
  ],
  limits: [
    guardingCaution,
    { code: 'TEST_TOO_SELDOM', broken: (_, { tests }) => tests < testsWanted * (1 - rounding) },
    { code: 'TESTER_TOO_SHORT', broken: (_, { share }) => share <= testerShare * (1 + rounding) },
  ],
  sources: [iso13849],
  compute: testRate,
});

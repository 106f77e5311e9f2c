import type { SheetCase } from '../sheet-case.ts';
import {
  oimlExamples,
  oimlNewZealand,
  oimlTransposed,
  ruleArithmetic,
  studentFactors,
} from './rule-sources.ts';

/** Packages, mL: so many at each. */
const packages = (...groups: readonly (readonly [many: number, millilitres: number])[]): readonly number[] =>
  groups.flatMap(([many, millilitres]) => Array.from({ length: many }, () => millilitres * 1e-6));

const exact = { absolute: 1e-12, reason: 'counts and figures of the example' } as const;

export const oimlLotCases: readonly SheetCase[] = [
  {
    // 2 at 480 and 123 at 501.3415 have a mean of 501
    name: 'butter of 500 g, lot of 3500: mean 501, two of 125 below -T, none below -2T: passes',
    source: {
      ...oimlExamples,
      place: 'butter; grams read as millilitres, packages made to its mean and counts',
    },
    inputs: {
      quantity: 5e-4,
      lotSize: 3500,
      volumes: packages([2, 480], [123, (125 * 501 - 2 * 480) / 123]),
    },
    outputs: {
      verdict: 'accept',
      sample: 125,
      more: 0,
      meanError: 1e-6,
      deficiency: 15e-6,
      below: 2,
      belowTwice: 0,
      allowed: 7,
    },
    tolerance: exact,
    notes: ['RULE_AUTHORITY'],
  },
  {
    name: 'wine of 750 mL, lot of 130: mean 752, one of 50 below -2T: fails on it alone',
    source: { ...oimlExamples, place: 'wine; packages made to its mean and counts' },
    inputs: { quantity: 7.5e-4, lotSize: 130, volumes: packages([1, 719], [49, (50 * 752 - 719) / 49]) },
    outputs: { verdict: 'reject', sample: 50, meanError: 2e-6, belowTwice: 1, allowed: 3 },
    tolerance: exact,
    notes: ['LOT_BARRED'],
  },
  ...(
    [
      [500, 50, 0.379],
      [501, 80, 0.29511],
      [3201, 125, 0.23399],
    ] as const
  ).map(([lotSize, sample, factor]) => ({
    name: `lot of ${lotSize}: ${sample} packages, factor t(0.995)/sqrt n`,
    source: studentFactors,
    inputs: { quantity: 5e-4, lotSize, volumes: packages([5, 501]) },
    outputs: { verdict: 'take more', sample, factor, more: sample - 5 },
    tolerance: { absolute: 1.2e-4, reason: 'the rule prints the factor to three decimals' },
  })),
  {
    name: 'a lot of 80 packages half at 498, half at 501 mL: -0.5 + 0.295 x 1.50946 mL: fails on the mean',
    source: ruleArithmetic,
    inputs: { quantity: 5e-4, lotSize: 1000, volumes: packages([40, 498], [40, 501]) },
    outputs: {
      verdict: 'reject',
      meanError: -0.5e-6,
      spread: 1.5094636e-6,
      correctedError: -0.0547082e-6,
      below: 0,
    },
    tolerance: { absolute: 1e-12, reason: 'printed digits' },
  },
  {
    name: 'regulation 4.34: a fourth package of 50 short of more than T fails the lot at once',
    source: oimlTransposed,
    inputs: { quantity: 5e-4, lotSize: 400, volumes: packages([4, 484], [10, 501]) },
    outputs: { verdict: 'reject', below: 4, allowed: 3 },
    tolerance: exact,
  },
  ...(
    [
      [39, 12, 0.7462, 0],
      [79, 12, 0.82572, 1],
      [149, 12, 0.85974, 2],
      [399, 32, 0.46521, 3],
      [4000, 32, 0.48313, 4],
    ] as const
  ).flatMap(([lotSize, sample, factor, allowed]): readonly SheetCase[] => [
    {
      name: `New Zealand, lot of ${lotSize}: t(0.995)/sqrt n for a finite lot`,
      source: { ...studentFactors, place: 'independent script, times the root of 1 - n/N' },
      inputs: { quantity: 5e-4, lotSize, table: 'New Zealand', volumes: packages([5, 501]) },
      outputs: { factor },
      tolerance: { absolute: 1e-3, reason: 'the rule prints the factor to three decimals' },
    },
    {
      name: `New Zealand, schedule 7A: a lot of ${lotSize} takes ${sample}, and lets ${allowed} be short`,
      source: oimlNewZealand,
      inputs: { quantity: 5e-4, lotSize, table: 'New Zealand', volumes: packages([5, 501]) },
      outputs: { sample, allowed, more: sample - 5 },
      tolerance: exact,
      notes: ['OIML_FINITE_LOT'],
    },
  ]),
  {
    name: 'New Zealand, schedule 7A: a lot of 8 is weighed whole, and its mean has nothing allowed for',
    source: oimlNewZealand,
    inputs: { quantity: 5e-4, lotSize: 8, table: 'New Zealand', volumes: packages([7, 500], [1, 499]) },
    outputs: { verdict: 'reject', sample: 8, factor: 0, allowed: 0, below: 0 },
    tolerance: exact,
  },
  {
    name: 'a plan that was typed in: twelve of sixty, mean 0.25 mL short, 0.826 x 0.45227 mL put on it: passes',
    source: ruleArithmetic,
    inputs: {
      quantity: 5e-4,
      lotSize: 60,
      table: 'typed in',
      typedSample: 12,
      typedFactor: 0.826,
      typedAllowed: 1,
      volumes: packages([3, 499], [9, 500]),
    },
    outputs: {
      verdict: 'accept',
      sample: 12,
      allowed: 1,
      meanError: -0.25e-6,
      spread: 0.452267e-6,
      correctedError: 0.1235725e-6,
    },
    tolerance: { absolute: 1e-12, reason: 'printed digits' },
    notes: ['OIML_PLAN_TYPED'],
  },
];

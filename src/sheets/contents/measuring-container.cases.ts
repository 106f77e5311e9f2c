import type { SheetCase } from '../sheet-case.ts';
import { measuringContainers, ruleArithmetic } from './rule-sources.ts';

/** 35 bottles, mL: 17 on either side of the mean and one on it; their standard deviation is the step. */
const bottles = (mean: number, step: number): readonly number[] =>
  [...Array.from({ length: 34 }, (_, i) => (i % 2 === 0 ? mean - step : mean + step)), mean].map(
    (millilitres) => millilitres * 1e-6,
  );

const exact = { absolute: 1e-13, reason: 'arithmetic of doubles' } as const;

export const measuringContainerCases: readonly SheetCase[] = [
  ...(
    [
      [75, 3],
      [150, 4.5],
      [250, 6],
      [330, 6.6],
      [500, 10],
      [750, 10],
      [1500, 15],
      [5000, 50],
    ] as const
  ).map(
    ([capacity, tolerance]): SheetCase => ({
      name: `table of 5.1.2: ${capacity} mL, ${tolerance} mL to either side`,
      source: measuringContainers,
      inputs: { capacity: capacity * 1e-6, measured: [capacity * 1e-6, capacity * 1e-6] },
      outputs: { tolerance: tolerance * 1e-6, verdict: 'take more', more: 33 },
      tolerance: exact,
      notes: ['RULE_AUTHORITY'],
    }),
  ),
  {
    name: '500 mL, mean 501, s 5: 508.85 and 493.15 lie inside 10 mL, s under 5.32: passes',
    source: ruleArithmetic,
    inputs: { capacity: 5e-4, measured: bottles(501, 5) },
    outputs: {
      verdict: 'accept',
      mean: 501e-6,
      spread: 5e-6,
      upper: 508.85e-6,
      lower: 493.15e-6,
      largestSpread: 5.32e-6,
      more: 0,
    },
    tolerance: exact,
  },
  {
    name: '500 mL, mean 502, s 5.2: 510.164 is over 510 mL: fails above',
    source: ruleArithmetic,
    inputs: { capacity: 5e-4, measured: bottles(502, 5.2) },
    outputs: { verdict: 'reject', upper: 510.164e-6 },
    tolerance: exact,
  },
  {
    name: '500 mL, mean 500, s 5.4: inside on both sides but spread over 5.32 mL: fails',
    source: ruleArithmetic,
    inputs: { capacity: 5e-4, measured: bottles(500, 5.4) },
    outputs: { verdict: 'reject', upper: 508.478e-6, lower: 491.522e-6 },
    tolerance: exact,
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { handbook, statisticsScript } from './fill-sources.ts';

/** 1 unit of the handbook written as 1 mL. */
const means = [
  324.925, 324.675, 324.725, 324.35, 325.35, 325.225, 324.125, 324.525, 325.225, 324.6, 324.625, 325.15,
  328.325, 327.25, 327.825, 328.5, 326.675, 327.775, 326.875, 328.35,
].map((x) => x * 1e-6);

const settings = { target: 325e-6, slack: 0.3175e-6, decision: 4.1959e-6 } as const;

export const cusumChartCases: readonly SheetCase[] = [
  {
    name: 'e-Handbook 6.3.2.3: the first signal is high, at group 14',
    source: handbook('6.3.2.3'),
    inputs: { values: means, ...settings },
    outputs: { firstHigh: 14, firstLow: 0 },
    tolerance: { absolute: 1e-9, reason: 'counts are exact' },
    notes: ['CHART_DRIFT'],
  },
  {
    name: 'the sums of it: 4.94 at group 14 and 19.04 at the last, 0.72 below at group 8, as printed, and the others',
    source: statisticsScript,
    inputs: { values: means, ...settings },
    outputs: {
      above: [
        0, 0, 0, 0, 0.0325, 0, 0, 0, 0, 0, 0, 0, 3.0075, 4.94, 7.4475, 10.63, 11.9875, 14.445, 16.0025,
        19.035,
      ].map((s) => s * 1e-6),
      below: [
        0, 0.0075, 0, 0.3325, 0, 0, 0.5575, 0.715, 0.1725, 0.255, 0.3125, 0, 0, 0, 0, 0, 0, 0, 0, 0,
      ].map((s) => s * 1e-6),
    },
    tolerance: { absolute: 1e-15, reason: 'exact decimal fractions, rounding of machine numbers' },
  },
  {
    name: 'the same mirrored at the target: low at group 14',
    source: statisticsScript,
    inputs: { values: means.map((x) => 650e-6 - x), ...settings },
    outputs: { firstHigh: 0, firstLow: 14 },
    tolerance: { absolute: 1e-9, reason: 'counts are exact' },
  },
];

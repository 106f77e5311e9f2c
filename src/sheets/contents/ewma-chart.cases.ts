import type { SheetCase } from '../sheet-case.ts';
import { handbook, statisticsScript } from './fill-sources.ts';

/** 1 unit of the handbook written as 1 mL. */
const run = [
  52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6,
  52.1,
].map((x) => x * 1e-6);

const settings = { target: 50e-6, spread: 2.0539e-6, weight: 0.3 } as const;

export const ewmaChartCases: readonly SheetCase[] = [
  {
    name: 'e-Handbook 6.3.2.4: limits 47.4115 and 52.5884, no signal',
    source: handbook('6.3.2.4'),
    inputs: { values: run, ...settings },
    outputs: { low: 47.4115e-6, high: 52.5884e-6, firstSignal: 0 },
    tolerance: { absolute: 0.0001e-6, reason: 'the handbook cuts 47.41157 to 47.4115' },
  },
  {
    name: 'e-Handbook 6.3.2.4: the first averages are 50.60 and 49.52',
    source: handbook('6.3.2.4'),
    inputs: { values: run.slice(0, 2), ...settings },
    outputs: { averages: [50.6e-6, 49.52e-6] },
    tolerance: { absolute: 0.005e-6, reason: 'two printed digits' },
  },
  {
    name: 'the same to the last, 51.99 as printed',
    source: statisticsScript,
    inputs: { values: run, ...settings },
    outputs: {
      averages: [
        50.6e-6, 49.52e-6, 50.564e-6, 50.1848e-6, 50.15936e-6, 49.211552e-6, 49.7480864e-6, 49.8536605e-6,
        50.2575623e-6, 50.3302936e-6, 50.1112055e-6, 49.3578438e-6, 49.5204907e-6, 50.0543435e-6,
        49.3780405e-6, 49.9246283e-6, 50.7272398e-6, 51.2290679e-6, 51.9403475e-6, 51.9882433e-6,
      ],
    },
    tolerance: { relative: 1e-8, reason: 'printed digits' },
  },
  {
    name: 'a step of two spreads after three good fills is seen at the second fill after it',
    source: statisticsScript,
    inputs: { values: [50e-6, 50e-6, 50e-6, 54e-6, 54e-6], ...settings, spread: 2e-6, reach: 2 },
    outputs: {
      reaches: [1.2e-6, 1.46478667e-6, 1.57839919e-6, 1.63118318e-6, 1.65643343e-6],
      firstSignal: 5,
    },
    tolerance: { relative: 1e-7, reason: 'eight printed digits' },
    notes: ['CHART_DRIFT'],
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { handbook, statisticsScript } from './fill-sources.ts';

/** 1 unit of the handbook written as 1 mL. */
const batches = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1].map((x) => x * 1e-6);

export const individualsChartCases: readonly SheetCase[] = [
  {
    name: 'e-Handbook 6.3.2.2: mean 50.81, moving range 1.8778, limits 45.8159 and 55.8041',
    source: handbook('6.3.2.2'),
    inputs: { values: batches },
    outputs: { mean: 50.81e-6, movingRange: 1.8778e-6, low: 45.8159e-6, high: 55.8041e-6 },
    tolerance: { absolute: 0.00006e-6, reason: 'four printed digits' },
    notes: ['CHART_FEW_SINGLES'],
  },
  {
    name: 'the same with a last batch of 60',
    source: statisticsScript,
    inputs: { values: [...batches, 60e-6] },
    outputs: { spread: 2.198581560284e-6, outside: 1, firstOutside: 11 },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
    notes: ['CHART_OUTSIDE'],
  },
];

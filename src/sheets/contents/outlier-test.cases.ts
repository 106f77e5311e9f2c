import type { SheetCase } from '../sheet-case.ts';
import { handbook, statisticsScript } from './fill-sources.ts';

/** 1 unit of the handbook written as 1 mL. */
const values = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57].map((x) => x * 1e-6);

export const outlierTestCases: readonly SheetCase[] = [
  {
    name: 'e-Handbook 1.3.5.17.1: G 2.4687 over 2.032, the 245.57 does not belong',
    source: handbook('1.3.5.17.1'),
    inputs: { values, sides: 'one' },
    outputs: { place: 8, value: 245.57e-6, statistic: 2.468765, critical: 2.032, verdict: 'outlier' },
    tolerance: { relative: 2e-4, reason: 'four printed digits' },
    notes: ['OUTLIER_FOUND'],
  },
  {
    name: 'eight values, either side, 5 %: 2.1266',
    source: statisticsScript,
    inputs: { values, sides: 'two' },
    outputs: { critical: 2.1266450871955 },
    tolerance: { relative: 1e-10, reason: 'printed digits' },
  },
  {
    name: 'eight values, one side, 1 %: 2.2208',
    source: statisticsScript,
    inputs: { values, sides: 'one', significance: 0.01 },
    outputs: { critical: 2.2208334515 },
    tolerance: { relative: 1e-7, reason: 'printed digits' },
  },
  {
    name: 'without the last value nothing is found',
    source: statisticsScript,
    inputs: { values: values.slice(0, 7) },
    outputs: { statistic: 1.27487918, verdict: 'none' },
    tolerance: { relative: 1e-6, reason: 'printed digits' },
  },
];

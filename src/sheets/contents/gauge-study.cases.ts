import type { Source } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';

const classic: Source = {
  title:
    'classic published study of ten parts, three operators, three trials, its ranges put through K 0.5908, 0.5231, 0.3146',
  place: 'independent script; data recalled, results as they are known',
  mark: 'computed',
};

export const gaugeStudyCases: readonly SheetCase[] = [
  {
    name: 'ranges 0.34167, 0.44467 and 3.51111: gauge 0.30577 of 1.14613, 26.68 %, five categories',
    source: classic,
    inputs: {
      meanRange: 0.34167e-6,
      operatorDifference: 0.44467e-6,
      partRange: 3.51111e-6,
      trials: '3',
      operators: '3',
      parts: '10',
    },
    outputs: {
      repeatability: 0.20186e-6,
      reproducibility: 0.22967e-6,
      gauge: 0.30577e-6,
      partSpread: 1.1046e-6,
      total: 1.14613e-6,
      share: 0.2668,
      categories: 5,
    },
    tolerance: { relative: 2e-4, reason: 'the printed factors have four digits' },
    notes: ['GAUGE_MIDDLING'],
  },
];

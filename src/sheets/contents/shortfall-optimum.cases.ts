import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './fill-sources.ts';

export const shortfallOptimumCases: readonly SheetCase[] = [
  {
    name: 'nine times as dear short as over: 1.2816 deviations over',
    source: statisticsScript,
    inputs: { spread: 1.78e-6, costRatio: 9 },
    outputs: {
      deviations: 1.2815515655446,
      over: 2.28116178667e-6,
      overflow: 2.365432638842e-6,
      shortfall: 0.08427085217289e-6,
    },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './fill-sources.ts';
import { laneFills } from './lane-fills.cases.ts';

export const laneLineWeightedCases: readonly SheetCase[] = [
  {
    name: 'twelve fills whose spread grows from 0.6 to 1.1 mL, by the matrices of the normal equations',
    source: statisticsScript,
    inputs: {
      ...laneFills,
      spreads: [0.6, 0.6, 0.7, 0.7, 0.8, 0.8, 0.9, 0.9, 1, 1, 1.1, 1.1].map((s) => s * 1e-6),
      preset: 990,
      presetSpread: 1e-6,
    },
    outputs: {
      afterRun: 5.07813196e-6,
      perCount: 0.4969206e-6,
      afterRunUncertainty: 1.21844873e-6,
      perCountUncertainty: 0.0015285e-6,
      correlation: -0.97856254579,
      spreadRatio: 1.09048135264,
      volume: 497.02952391e-6,
      meanBand: 0.9076496788e-6,
      singleBand: 2.5937392331e-6,
    },
    tolerance: { relative: 5e-6, reason: 'printed digits of the script; six of u(b)' },
    notes: ['LINE_WEIGHTS_IDLE'],
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './fill-sources.ts';

const lane = { afterRun: 6.2e-6, perCount: 0.495e-6 } as const;

export const volumePresetCases: readonly SheetCase[] = [
  {
    name: '500 mL, T 15 mL, spread 1.4 mL: the mean governs, preset 998',
    source: statisticsScript,
    inputs: { label: 500e-6, deficiency: 15e-6, spread: 1.4e-6, ...lane },
    outputs: {
      meanNeeded: 500e-6,
      byMean: 500e-6,
      byShare: 487.743949578e-6,
      byNone: 475.20662308e-6,
      rule: 'mean',
      preset: 998,
      volume: 500.21e-6,
    },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
    notes: ['VOLUME_NO_MARGIN'],
  },
  {
    name: '500 mL with a spread of 9 mL: none below Q - 2T governs, preset 1005',
    source: statisticsScript,
    inputs: { label: 500e-6, deficiency: 15e-6, spread: 9e-6, ...lane },
    outputs: {
      meanNeeded: 503.471148369e-6,
      byShare: 502.639675861e-6,
      rule: 'none',
      preset: 1005,
      volume: 503.675e-6,
    },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
  },
];

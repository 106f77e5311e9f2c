import type { SheetCase } from '../sheet-case.ts';
import { guideGauge, statisticsScript } from './fill-sources.ts';

/** Contributions of the end gauge in nm, 1 nm written as 1 ms, around 0.4 s. */
const endGauge = {
  time: 0.4,
  contributions: [0.025, 0.0097, 0.0029, 0.0166],
  dofs: [18, 25.6, 50, 2],
  confidence: 0.9,
} as const;

export const timeIntervalCases: readonly SheetCase[] = [
  {
    name: 'GUM H.1, end gauge: 25, 9.7, 2.9 and 16.6 make 32 with 16.7 degrees of freedom',
    source: guideGauge,
    inputs: endGauge,
    outputs: { combined: 0.0317, dof: 16.7 },
    tolerance: { relative: 5e-3, reason: 'three printed digits; contributions rounded to two and three' },
  },
  {
    name: 'the same at 90 %, around 0.4 s, even on a scale of ratios',
    source: statisticsScript,
    inputs: endGauge,
    outputs: {
      combined: 0.03167112249353,
      dof: 16.76455398092,
      factor: 1.741013423026,
      lower: 0.3484918777615,
      upper: 0.4591211738642,
      shares: [0.6230933344, 0.0938029629, 0.0083843439, 0.2747193588],
    },
    tolerance: { relative: 1e-8, reason: 'printed digits' },
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { eurachem, guideGauge, statisticsScript } from './fill-sources.ts';

/** Contributions in nm, 1 nm written as 0.001 mL. */
const endGauge = {
  contributions: [25, 9.7, 2.9, 16.6].map((nm) => nm * 1e-9),
  dofs: [18, 25.6, 50, 2],
  confidence: 0.99,
} as const;

export const combinedUncertaintyCases: readonly SheetCase[] = [
  {
    name: 'Eurachem A1: 0.6665, 0.49995 and 0.0579 make 0.835',
    source: eurachem,
    inputs: { contributions: [0.6665e-6, 0.49995e-6, 0.0579e-6], dofs: [1e9, 1e9, 1e9] },
    outputs: { combined: 0.835e-6 },
    tolerance: { absolute: 0.001e-6, reason: 'three printed digits' },
  },
  {
    name: 'GUM H.1, end gauge: 25, 9.7, 2.9 and 16.6 make 32 with 16.7 degrees of freedom',
    source: guideGauge,
    inputs: endGauge,
    outputs: { combined: 31.7e-9, dof: 16.7 },
    tolerance: { relative: 5e-3, reason: 'three printed digits; contributions rounded to two and three' },
  },
  {
    name: 'the same expanded at 99 %, without cutting the degrees to a whole number',
    source: statisticsScript,
    inputs: endGauge,
    outputs: {
      combined: 31.67112249353e-9,
      dof: 16.76455398092,
      factor: 2.903271296456,
      expanded: 91.94986086201e-9,
      shares: [0.6230933344, 0.0938029629, 0.0083843439, 0.2747193588],
    },
    tolerance: { relative: 1e-8, reason: 'printed digits' },
  },
];

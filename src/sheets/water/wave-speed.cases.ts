import type { SheetCase } from '../sheet-case.ts';
import { characteristics } from './sources.ts';

export const waveSpeedCases: readonly SheetCase[] = [
  ...(
    [
      ['stainless 38 x 1.5 mm', 0.038, 0.0015, 193e9, 1302.9],
      ['PVC-U 27.2 x 2.4 mm', 0.0272, 0.0024, 3e9, 486],
      ['PE 26 x 3 mm', 0.026, 0.003, 0.9e9, 315],
      ['hose 38 x 6 mm', 0.038, 0.006, 0.1e9, 125],
    ] as const
  ).map(([what, bore, wall, elasticModulus, waveSpeed]) => ({
    name: `${what}, water of 20 degC`,
    source: characteristics,
    inputs: { bulkModulus: 2.179e9, density: 998.207, bore, wall, elasticModulus },
    outputs: { waveSpeed },
    tolerance: { relative: 3e-3, reason: 'three printed digits' },
  })),
  ...(
    [
      [0.001, 506],
      [0.01, 173],
    ] as const
  ).map(([gasFraction, waveSpeed]) => ({
    name: `free gas of ${gasFraction} at 3 bar absolute`,
    source: characteristics,
    inputs: {
      bulkModulus: 2.179e9,
      density: 998.207,
      bore: 0.038,
      wall: 0.0015,
      elasticModulus: 193e9,
      gasFraction,
      pressure: 300000,
    },
    outputs: { waveSpeed },
    tolerance: {
      relative: 5e-3,
      reason: 'three printed digits; the reference may not have thinned the mixture',
    },
    notes: ['WAVE_FREE_GAS'],
  })),
];

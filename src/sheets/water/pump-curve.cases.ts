import type { SheetCase } from '../sheet-case.ts';
import { epanetManual } from './sources.ts';

export const pumpCurveCases: readonly SheetCase[] = [
  {
    name: 'three points 32, 28 and 14 m at 0, 2 and 4 L/s',
    source: epanetManual,
    inputs: { flows: [0, 0.002, 0.004], heads: [32, 28, 14] },
    outputs: { shutOffHead: 32, exponent: 2.16993, factor: 0.88889 * 1000 ** 2.16993 },
    tolerance: { relative: 5e-5, reason: 'five printed digits, and those of C weigh sevenfold in B' },
  },
  {
    name: 'one duty point 24 m at 3 L/s: EPANET rule',
    source: epanetManual,
    inputs: { flows: [0.003], heads: [24] },
    outputs: { shutOffHead: 32, exponent: 2, factor: 0.88889e6, runOutFlow: 0.006, residual: 0 },
    tolerance: { relative: 1e-5, absolute: 1e-12, reason: 'printed digits' },
    notes: ['PUMP_ONE_POINT'],
  },
  {
    name: 'published pump in US units through its three points: C 2.3640',
    source: {
      title: 'hydraulics vignette points, power function through them',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: { flows: [0, 0.315450982, 0.49525804174], heads: [24.6888, 18.288, 6.096] },
    outputs: { shutOffHead: 24.6888, exponent: 2.364, factor: 97.8969 },
    tolerance: { relative: 1e-4, reason: 'printed digits' },
  },
  {
    name: 'five scattered points by a general least-squares routine',
    source: {
      title: 'non-linear least squares of a numerical library',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: { flows: [0.0005, 0.001, 0.002, 0.003, 0.004], heads: [31.6, 31, 28.2, 21.6, 14.3] },
    outputs: {
      shutOffHead: 32.0287807,
      factor: 1449638.67,
      exponent: 2.04704891,
      residual: 0.33413414,
      runOutFlow: 0.00531671433,
    },
    tolerance: {
      relative: 1e-5,
      reason: 'the minimum is flat: two routines find C within about 1e-7 of each other, B within 1e-6',
    },
  },
];

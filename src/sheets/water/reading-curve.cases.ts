import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const readingCurveCases: readonly SheetCase[] = [
  {
    name: 'two readings, by hand: 2 bar at 1 L/s and 1.4 bar at 2 L/s give 2.2 - 0.2 Q^2',
    source: arithmetic,
    inputs: { flows: [1e-3, 2e-3], pressures: [2e5, 1.4e5], flow: 1.5e-3 },
    outputs: { shutOffPressure: 2.2e5, residual: 0, pressure: 1.75e5 },
    tolerance: { relative: 1e-9, absolute: 1e-6, reason: 'exact but for rounding' },
  },
];

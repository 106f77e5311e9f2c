import type { SheetCase } from '../sheet-case.ts';
import { epanetEngine } from './sources.ts';

export const hazenWilliamsCases: readonly SheetCase[] = [
  {
    name: 'EPANET engine, 800 m of 150 mm, C 110, 30 L/s: 45.7 m fall to 23.653 m',
    source: epanetEngine,
    inputs: { flow: 0.03, bore: 0.15, length: 800, factor: 110 },
    outputs: { headLoss: 22.047, velocity: 1.69765, loss: 22.047 * 999.1 * 9.80665 },
    tolerance: { relative: 1e-3, reason: 'constants of the two forms are rounded, 10.67 against 4.727' },
  },
  {
    name: 'EPANET engine, the same main at 36.46 L/s: 14.059 m left',
    source: epanetEngine,
    inputs: { flow: 0.03646, bore: 0.15, length: 800, factor: 110 },
    outputs: { headLoss: 31.641 },
    tolerance: { relative: 1e-3, reason: 'constants of the two forms are rounded, 10.67 against 4.727' },
  },
];

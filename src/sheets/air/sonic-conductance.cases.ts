import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const sonicConductanceCases: readonly SheetCase[] = [
  {
    name: 'a Cv of 1 is 6.69 sqrt(0.35) = 3.958 dm3/(s bar) at b = 0.3, 19.93 mm2',
    source: script,
    inputs: { flowCoefficient: 0.864978, criticalRatio: 0.3 },
    outputs: { conductance: 6.69e-8 * Math.sqrt(0.35), effectiveArea: 5.03e-6 * 6.69 * Math.sqrt(0.35) },
    tolerance: { relative: 3e-3, reason: 'three printed digits of 6.69 and 5.03' },
    notes: ['CONDUCTANCE_NO_FACTOR'],
  },
  {
    name: 'and 3.3 at b = 0.5',
    source: script,
    inputs: { flowCoefficient: 0.864978, criticalRatio: 0.5 },
    outputs: { conductance: 3.3e-8 },
    tolerance: { relative: 1.5e-2, reason: 'two printed digits' },
  },
];

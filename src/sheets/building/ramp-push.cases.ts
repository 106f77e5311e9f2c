import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const rampPushCases: readonly SheetCase[] = [
  {
    name: '1000 kg on 1 in 12, rolling 0.02: 1010 N up, 619 N held back, 196 N on the level, 4.764 degrees',
    source: arithmetic,
    inputs: { mass: 1000, slope: 1 / 12, rolling: 0.02 },
    outputs: { upForce: 1009.85, holdForce: 618.94, levelForce: 196.133, angle: 0.0831412 },
    tolerance: { relative: 2e-5, reason: 'five digits' },
    notes: ['CAUTION_MOVING', 'RAMP_RUNS_AWAY', 'RAMP_BY_HAND'],
  },
  {
    name: 'a 3-4-5 ramp without friction: three fifths of the weight',
    source: arithmetic,
    inputs: { mass: 100, slope: 0.75, rolling: 0 },
    outputs: { upForce: 588.399, holdForce: 588.399 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
  },
];

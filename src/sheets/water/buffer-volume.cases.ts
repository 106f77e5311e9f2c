import type { SheetCase } from '../sheet-case.ts';

export const bufferVolumeCases: readonly SheetCase[] = [
  {
    name: '12 lanes of 0.30951 L/s fill 0.75 L every 6 s from 1.6 L/s',
    source: { title: 'hand calculation of one burst a cycle', place: 'independent script', mark: 'computed' },
    inputs: { durations: [0.75 / 0.30951, 6 - 0.75 / 0.30951], demands: [0.00371412, 0], makeUp: 0.0016 },
    outputs: { volume: 0.00512, meanDemand: 0.0015, peakDemand: 0.003714 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
  },
];

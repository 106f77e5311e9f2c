import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const screenBlockingCases: readonly SheetCase[] = [
  {
    name: 'half blocked at equal flow: four times the loss',
    source: arithmetic,
    inputs: { cleanLoss: 5000, cleanFlow: 1e-3, lossNow: 20_000, flowNow: 1e-3 },
    outputs: { blocked: 0.5, lossRatio: 4 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['SCREEN_HALF'],
  },
  {
    name: '30 % blocked: 2.04 times; with a fifth less flow the gauge shows 1.306 times',
    source: arithmetic,
    inputs: { cleanLoss: 5000, cleanFlow: 1e-3, lossNow: 5000 * 1.30612, flowNow: 8e-4 },
    outputs: { blocked: 0.3, lossRatio: 2.0408 },
    tolerance: { relative: 1e-4, reason: 'five printed digits' },
    notes: ['SCREEN_FLOW_FALLS'],
  },
];

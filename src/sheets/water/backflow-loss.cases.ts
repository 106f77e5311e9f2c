import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const backflowLossCases: readonly SheetCase[] = [
  {
    name: '3 bar before a device that loses 0.75 to 0.95 bar by its curve: 2.05 to 2.25 bar behind',
    source: arithmetic,
    inputs: { pressure: 3e5, lowLoss: 0.75e5, highLoss: 0.95e5 },
    outputs: { least: 2.05e5, most: 2.25e5 },
    tolerance: { relative: 1e-9, reason: 'differences of stated figures' },
    notes: ['BACKFLOW_RULES'],
  },
  {
    name: 'without a curve 0.7 to 1.0 bar are taken, from memory',
    source: { title: 'plumbing trade', place: 'reduced-pressure device', mark: 'memory' },
    inputs: { pressure: 2e5 },
    outputs: { least: 1e5, most: 1.3e5 },
    tolerance: { relative: 1e-9, reason: 'differences of stated figures' },
    notes: ['BACKFLOW_MEMORY'],
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const flushingCases: readonly SheetCase[] = [
  {
    name: '20 m of 50 mm and 12 m of 32 mm: 48.92 L, ten times 489 L; 2.945 L/s for 1.5 m/s',
    source: arithmetic,
    inputs: { bores: [0.05, 0.032], lengths: [20, 12], available: 2e-3 },
    outputs: {
      volume: 0.0489209,
      flushVolume: 0.489209,
      flowWanted: 2.94524e-3,
      velocityReached: 1.018592,
      time: 244.604,
    },
    tolerance: { relative: 1e-5, reason: 'six digits' },
    notes: ['FLUSHING_SLOW', 'FLUSHING_HABIT', 'FLUSHING_BEFORE'],
  },
  {
    name: '100 ft of 1 in hold 4.08 US gallons of 231 cubic inches',
    source: {
      title: 'definition of the US gallon',
      place: '231 cubic inches; hand calculation',
      mark: 'computed',
    },
    inputs: { bores: [0.0254], lengths: [30.48], available: 1e-3 },
    outputs: { volume: 4.08 * 3.785412e-3 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
  },
];

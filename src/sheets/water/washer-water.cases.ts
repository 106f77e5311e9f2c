import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const washerWaterCases: readonly SheetCase[] = [
  {
    name: '600 jugs an hour at 2 L, 60 L/h of make-up, 400 L let go every 8 h: 1310 L/h, 2.183 L a jug',
    source: arithmetic,
    inputs: {
      rate: 600 / 3600,
      rinse: 2e-3,
      makeUp: 0.06 / 3600,
      dumped: 0.4,
      betweenDumps: 28_800,
      carriedOut: 2e-5,
      evaporated: 0.0055 / 3600,
    },
    outputs: { fresh: 1.31 / 3600, perBottle: 2.18333e-3, toDrain: 1.2925 / 3600 },
    tolerance: { relative: 1e-5, reason: 'sums of stated figures' },
    notes: ['WASHER_WATER_MEAN'],
  },
];

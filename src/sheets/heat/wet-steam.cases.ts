import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const wetSteamCases: readonly SheetCase[] = [
  {
    name: '95 kg/h dry are 100 kg/h at a dryness of 0.95',
    source: arithmetic,
    inputs: { dry: 95 / 3600, dryness: 0.95 },
    outputs: { steam: 100 / 3600 },
    tolerance: { relative: 1e-12, reason: 'exact figures' },
    notes: ['CAUTION_STEAM'],
  },
];

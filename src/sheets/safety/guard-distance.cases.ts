import type { SheetCase } from '../sheet-case.ts';
import { byHand, referenceCases } from './sources.ts';

const exact = { relative: 1e-9, reason: 'exact figures' } as const;

export const guardDistanceCases: readonly SheetCase[] = [
  {
    name: '0.35 s and a slot of 10 to 12 mm before the signal: 560 + 100 mm',
    source: referenceCases,
    inputs: { time: 0.35, gap: 0.011, edition: '2010' },
    outputs: { intrusion: 0.1, distance: 0.66 },
    tolerance: exact,
    notes: ['CAUTION_GUARDING', 'DISTANCE_2010', 'DISTANCE_STOP_MEASURED'],
  },
  {
    name: 'the same with 0.1 s until the gap lets an arm in: 400 + 100 mm',
    source: byHand,
    inputs: { time: 0.35, opening: 0.1, gap: 0.012, edition: '2010' },
    outputs: { distance: 0.5 },
    tolerance: exact,
    notes: ['GUARD_OPENING_COUNTED'],
  },
  {
    name: 'a signal that comes at once leaves no gap: 560 mm; 2024 adds its Z',
    source: byHand,
    inputs: { time: 0.35, gap: 0, edition: '2024', added: 0.05 },
    outputs: { intrusion: 0, distance: 0.61 },
    tolerance: exact,
    notes: ['DISTANCE_2024_SECOND_HAND'],
  },
];

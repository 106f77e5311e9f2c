import type { SheetCase } from '../sheet-case.ts';
import { byHand } from './sources.ts';

const manual = {
  title: 'public manual of a light curtain, ISO 13855',
  place: 'example: 290 + 20 + 10 ms, resolution 14 mm',
  mark: 'read',
} as const;
const exact = { relative: 1e-9, reason: 'exact figures' } as const;

export const verticalFieldDistanceCases: readonly SheetCase[] = [
  {
    name: '320 ms and 14 mm: 640 mm at the hand, so again at a walk: 512 mm',
    source: manual,
    inputs: { time: 0.32, resolution: 0.014 },
    outputs: { intrusion: 0, distance: 0.512 },
    tolerance: exact,
    notes: ['CAUTION_GUARDING', 'DISTANCE_2010', 'FIELD_SLOWER_STEP'],
  },
  {
    name: '165 ms and 14 mm: 330 mm',
    source: {
      title: 'public page on the distance of light curtains, ISO 13855',
      place: 'example',
      mark: 'read',
    },
    inputs: { time: 0.165, resolution: 0.014 },
    outputs: { intrusion: 0, distance: 0.33 },
    tolerance: exact,
  },
  {
    name: '300 ms and 14 mm: 600 mm at the hand, 480 at a walk, so 500 mm',
    source: {
      ...byHand,
      place: 'steps of ISO 13855:2010; a public catalogue stops at 1600 T and prints 480 mm, below the rule',
    },
    inputs: { time: 0.3, resolution: 0.014 },
    outputs: { distance: 0.5 },
    tolerance: exact,
    notes: ['FIELD_SLOWER_STEP'],
  },
  {
    name: '20 ms and 14 mm: 40 mm, so the least, 100 mm',
    source: {
      title: 'public manual of a light curtain of 14 mm, ISO 13855',
      place: 'vertical installation: the distance must be 100 mm or more',
      mark: 'read',
    },
    inputs: { time: 0.02, resolution: 0.014 },
    outputs: { distance: 0.1 },
    tolerance: exact,
  },
  {
    name: '100 ms and 30 mm: 8 times 16 mm and 200 mm',
    source: byHand,
    inputs: { time: 0.1, resolution: 0.03 },
    outputs: { intrusion: 0.128, distance: 0.328 },
    tolerance: exact,
  },
  {
    name: 'coarser than 40 mm: 850 mm are added',
    source: {
      title: 'public guide to the positioning of safeguards, ISO 13855',
      place: '40 to 70 mm: K 1600, C 850',
      mark: 'read',
    },
    inputs: { time: 0.2, resolution: 0.05 },
    outputs: { intrusion: 0.85, distance: 1.17 },
    tolerance: exact,
    notes: ['FIELD_NOT_FOR_HANDS'],
  },
];

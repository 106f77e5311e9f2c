import type { SheetCase } from '../sheet-case.ts';

const translated = {
  title: 'GOST ISO 13855, two-hand controls',
  edition: '2006',
  place: 'clause 8, equation 11; public transcription; numbers put in by hand',
  mark: 'read',
} as const;
const exact = { relative: 1e-9, reason: 'exact figures' } as const;

export const twoHandDistanceCases: readonly SheetCase[] = [
  {
    name: '0.2 s: 320 + 250 mm',
    source: translated,
    inputs: { time: 0.2, shrouding: 'open', edition: '2010' },
    outputs: { intrusion: 0.25, distance: 0.57 },
    tolerance: exact,
    notes: ['CAUTION_GUARDING', 'DISTANCE_2010', 'TWO_HAND_ONE_PERSON'],
  },
  {
    name: 'shrouded, 50 ms: 80 mm, so the least, 100 mm',
    source: translated,
    inputs: { time: 0.05, shrouding: 'shrouded', edition: '2010' },
    outputs: { intrusion: 0, distance: 0.1 },
    tolerance: exact,
  },
  {
    name: 'edition of 2024, 0.2 s: 320 + 550 mm',
    source: {
      title: 'ISO 13855',
      edition: 'draft of 2024',
      place: 'public account of an engineering office: 1600 and 550; numbers put in by hand',
      mark: 'read',
    },
    inputs: { time: 0.2, shrouding: 'open', edition: '2024' },
    outputs: { intrusion: 0.55, distance: 0.87 },
    tolerance: exact,
    notes: ['DISTANCE_2024_SECOND_HAND'],
  },
];

import type { SheetCase } from '../sheet-case.ts';

const manual = {
  title: 'public manuals of two light curtains, ISO 13855',
  place: 'horizontal position: S = 1600 T + 1200 - 0.4 H, H = 15 (d - 50); numbers put in by hand',
  mark: 'read',
} as const;
const exact = { relative: 1e-9, reason: 'exact figures' } as const;

export const parallelFieldDistanceCases: readonly SheetCase[] = [
  {
    name: '0.4 s, 300 mm high, resolution 70 mm: 640 + 1080 mm, least height 300 mm',
    source: manual,
    inputs: { time: 0.4, height: 0.3, resolution: 0.07, edition: '2010' },
    outputs: { leastHeight: 0.3, intrusion: 1.08, distance: 1.72 },
    tolerance: exact,
    notes: ['CAUTION_GUARDING', 'DISTANCE_2010'],
  },
  {
    name: 'on the floor: 1200 mm are added',
    source: manual,
    inputs: { time: 0.25, height: 0, resolution: 0.05, edition: '2010' },
    outputs: { leastHeight: 0, intrusion: 1.2, distance: 1.6 },
    tolerance: exact,
  },
  {
    name: 'a metre high: 850 mm at least, not 800',
    source: { title: 'ISO 13855', edition: '2010', place: 'C at least 850 mm', mark: 'memory' },
    inputs: { time: 0.5, height: 1, resolution: 0.05, edition: '2010' },
    outputs: { intrusion: 0.85, distance: 1.65 },
    tolerance: exact,
    notes: ['FIELD_CREPT_UNDER'],
  },
  {
    name: 'edition of 2024: 1200 mm whatever the height, and Z',
    source: {
      title: 'ISO 13855',
      edition: '2024',
      place: 'public account of an engineering office: S = 1600 T + 1200 + Z; numbers put in by hand',
      mark: 'read',
    },
    inputs: { time: 0.5, height: 0.25, resolution: 0.05, edition: '2024', added: 0.1 },
    outputs: { intrusion: 1.2, distance: 2.1 },
    tolerance: exact,
    notes: ['DISTANCE_2024_SECOND_HAND', 'FIELD_CREPT_UNDER'],
  },
];

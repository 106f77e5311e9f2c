import type { SheetCase } from '../sheet-case.ts';

const guide = {
  title: 'public guide to the positioning of safeguards, ISO 13855',
  place: 'separate beams: what is added, and heights over the floor; the product 1600 T by hand',
  mark: 'read',
} as const;
const exact = { relative: 1e-9, reason: 'exact figures' } as const;

export const beamDistanceCases: readonly SheetCase[] = [
  {
    name: 'two beams: 850 mm, at 400 and 900 mm',
    source: guide,
    inputs: { time: 0.5, count: '2' },
    outputs: { intrusion: 0.85, distance: 1.65, heights: [0.4, 0.9] },
    tolerance: exact,
    notes: ['CAUTION_GUARDING', 'DISTANCE_2010'],
  },
  {
    name: 'three beams: 850 mm, at 300, 700 and 1100 mm',
    source: guide,
    inputs: { time: 0.25, count: '3' },
    outputs: { intrusion: 0.85, distance: 1.25, heights: [0.3, 0.7, 1.1] },
    tolerance: exact,
  },
  {
    name: 'four beams: 850 mm, at 300, 600, 900 and 1200 mm',
    source: guide,
    inputs: { time: 0.25, count: '4' },
    outputs: { intrusion: 0.85, distance: 1.25, heights: [0.3, 0.6, 0.9, 1.2] },
    tolerance: exact,
  },
  {
    name: 'one beam: 1200 mm',
    source: guide,
    inputs: { time: 0.5, count: '1' },
    outputs: { intrusion: 1.2, distance: 2 },
    tolerance: exact,
    notes: ['BEAM_SINGLE'],
  },
  {
    name: 'one beam stands at 750 mm',
    source: { title: 'ISO 13855', edition: '2010', place: 'height of a single beam', mark: 'memory' },
    inputs: { time: 0.5, count: '1' },
    outputs: { heights: [0.75] },
    tolerance: exact,
  },
];

import type { SheetCase } from '../sheet-case.ts';

export const usDistanceCases: readonly SheetCase[] = [
  {
    name: 'a second: 63 inches',
    source: {
      title: '29 CFR 1910.217(c)(3)(iii)(e)',
      place: 'constant, quoted on a public page',
      mark: 'read',
    },
    inputs: { time: 1 },
    outputs: { distance: 63 * 0.0254 },
    tolerance: { relative: 1e-12, reason: 'exact figures' },
    notes: ['CAUTION_GUARDING', 'US_FOR_PRESSES', 'US_NO_PENETRATION'],
  },
  {
    name: '0.3 s and an inch of penetration: 19.9 in, 505 mm',
    source: {
      title: 'public catalogue of a maker of guarding components',
      place: 'example of distance calculations',
      mark: 'read',
    },
    inputs: { time: 0.3, penetration: 0.0254 },
    outputs: { distance: 0.505 },
    tolerance: { absolute: 1e-3, reason: 'it prints 19.9 in and 505 mm' },
  },
];

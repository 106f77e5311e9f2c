import type { SheetCase } from '../sheet-case.ts';
import { fineSearch } from './sources.ts';

const thin = 1e-3;

export const cornerTurnCases: readonly SheetCase[] = [
  {
    name: 'a pole round the corner of corridors of 2.7 and 6.4: (27^(2/3) + 64^(2/3))^(3/2)/10 = 12.5',
    source: {
      title: 'textbook problem of the ladder round a corner',
      place: '(a^(2/3) + b^(2/3))^(3/2), evaluated by hand: 9 + 16 = 25',
      mark: 'computed',
    },
    inputs: { length: 12, width: thin, first: 2.7, second: 6.4, clearance: 0 },
    outputs: { longest: 12.5 },
    tolerance: { relative: 3e-4, reason: 'the pole is a millimetre thick, which takes 2.1 mm' },
    notes: ['CAUTION_MOVING'],
  },
  {
    name: 'two corridors of 1 m, 0.5 m wide: 2 sqrt(2) - 1 at 45 degrees, by symmetry',
    source: { title: 'symmetry of the square corner', place: 'hand calculation', mark: 'computed' },
    inputs: { length: 1.5, width: 0.5, first: 1, second: 1, clearance: 0 },
    outputs: { longest: 1.8284271, margin: 0.3284271, answer: 'turns' },
    tolerance: { relative: 1e-6, reason: 'eight digits' },
  },
  ...(
    [
      [1.2, 1.6, 0.8, 2.3319],
      [1.5, 2.5, 1.2, 3.1049],
      [1, 1, 0.5, 1.8252],
    ] as const
  ).map(([first, second, width, longest]) => ({
    name: `corridors of ${first} and ${second} m, ${width} m wide: places and angles tried one by one, two grids carried on to none`,
    source: fineSearch,
    inputs: { length: 1, width, first, second, clearance: 0 },
    outputs: { longest },
    tolerance: { relative: 4e-3, reason: 'two grids of 2 and 1 cm, carried on in a straight line' },
  })),
  ...(
    [
      [1, 1, 0.9, 1.0155],
      [1.2, 1.6, 0.05, 3.8017],
    ] as const
  ).map(([first, second, width, longest]) => ({
    name: `corridors of ${first} and ${second} m, ${width} m wide: places and angles tried one by one`,
    source: fineSearch,
    inputs: { length: 1, width, first, second, clearance: 0 },
    outputs: { longest },
    tolerance: {
      relative: 1.7e-2,
      reason: 'one grid of 1 cm and 0.25 degrees: it finds a little less, never more',
    },
  })),
  {
    name: 'as wide as the corridor it goes round only sideways',
    source: { title: 'plane geometry', place: 'hand calculation', mark: 'computed' },
    inputs: { length: 1.9, width: 1.2, first: 1.2, second: 2, clearance: 0 },
    outputs: { longest: 2, answer: 'sideways' },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['CORNER_SIDEWAYS'],
  },
];

import type { SheetCase } from '../sheet-case.ts';

const pound = 0.45359237;

export const cornerWeighingCases: readonly SheetCase[] = [
  {
    name: 'a car on four scales: 50.9 % on its front, diagonals of 1279 and 1276 lb',
    source: {
      title: 'public page on the corner weights of a racing car',
      place: 'second example: 694, 606, 670 and 585 lb',
      mark: 'read',
    },
    inputs: {
      firstLeft: 694 * pound,
      firstRight: 606 * pound,
      secondLeft: 670 * pound,
      secondRight: 585 * pound,
      base: 1,
      track: 1,
    },
    outputs: { along: 1 - 0.509, mass: 2555 * pound, diagonal: 3 / 2555 },
    tolerance: { relative: 1e-3, reason: 'three printed digits of the share' },
    notes: ['CAUTION_LIFTING', 'LIFTING_DRAINED', 'WEIGHING_HEIGHT'],
  },
  {
    name: '15 000 and 9 000 N at 2.4 m, each shared by two scales: 0.900 m from the heavy end',
    source: {
      title: 'reference cases of lifting and fitting',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: {
      firstLeft: 7500 / 9.80665,
      firstRight: 7500 / 9.80665,
      secondLeft: 4500 / 9.80665,
      secondRight: 4500 / 9.80665,
      base: 2.4,
      track: 1.2,
    },
    outputs: { along: 0.9, across: 0.6, weight: 24_000 },
    tolerance: { relative: 1e-6, reason: 'exact figures' },
  },
  {
    name: 'one corner that hardly stands says that the floor was not level',
    source: { title: 'arithmetic', place: 'hand calculation', mark: 'computed' },
    inputs: { firstLeft: 400, firstRight: 100, secondLeft: 200, secondRight: 300, base: 2, track: 1 },
    outputs: { along: 1, across: 0.4, diagonal: 0.4 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['WEIGHING_ROCKS'],
  },
];

import type { SheetCase } from '../sheet-case.ts';

export const twoPointWeighingCases: readonly SheetCase[] = [
  {
    name: '15 000 and 9 000 N at 2.4 m: 0.900 m from the heavy end',
    source: {
      title: 'reference cases of lifting and fitting',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: { first: 15_000 / 9.80665, second: 9000 / 9.80665, distance: 2.4 },
    outputs: { fromFirst: 0.9, weight: 24_000, mass: 2447.32, offCentre: -0.125 },
    tolerance: { relative: 1e-5, reason: 'six digits' },
    notes: ['CAUTION_LIFTING', 'LIFTING_DRAINED', 'WEIGHING_OFF_CENTRE'],
  },
];

import type { SheetCase } from '../sheet-case.ts';

const source = {
  title: 'engineering web handbook, pressure drop in compressed air fittings',
  place: 'metric table, one fitting of each kind added by hand',
  mark: 'read',
} as const;

export const fittingLengthCases: readonly SheetCase[] = (
  [
    ['15', 0.15 + 0.25 + 0.2 + 0.5],
    ['25', 0.25 + 0.5 + 0.4 + 1.4],
    ['65', 0.8 + 1.4 + 1.1 + 3.6],
    ['125', 1.5 + 3.2 + 2 + 7],
  ] as const
).map(([size, length]) => ({
  name: `one of each at DN ${size}`,
  source,
  inputs: { size, longBends: 1, elbows: 1, teeRuns: 1, teeBranches: 1 },
  outputs: { length },
  tolerance: { relative: 1e-9, reason: 'a sum of printed figures' },
  notes: ['FITTINGS_EMPIRICAL'],
}));

import type { SheetCase } from '../sheet-case.ts';

/** Arithmetic of the factors, not their table: 0.978 sqrt(dp p_2), p_2 in psia. */
export const valveFactorCases: readonly SheetCase[] = (
  [
    ['80', '2'],
    ['80', '5'],
    ['80', '10'],
    ['90', '5'],
    ['100', '5'],
    ['100', '10'],
  ] as const
).map(([pressure, loss]) => ({
  name: `${pressure} psig with ${loss} psi lost: the arithmetic of compression and of the US valve formula`,
  source: {
    title: 'independent script',
    place: '(p + 14.7)/14.7 and 0.978 sqrt(dp (p - dp + 14.7))',
    mark: 'computed',
  },
  inputs: { pressure, loss },
  outputs: {
    compressionFactor: (Number(pressure) + 14.7) / 14.7,
    dropFactor: 0.978 * Math.sqrt(Number(loss) * (Number(pressure) - Number(loss) + 14.7)),
  },
  tolerance: { relative: 1.5e-2, reason: 'the tables have two to three digits and lie within 1.2 %' },
}));

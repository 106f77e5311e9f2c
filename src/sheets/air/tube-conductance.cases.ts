import type { SheetCase } from '../sheet-case.ts';

/** Isothermal pipe, Colebrook-White, 1.5 um rough, 1.5 velocity heads for its ends, 7 bar(a), 20 degC. */
const script = {
  title: 'independent script of isothermal pipe flow with friction',
  place: 'roughness 1.5 um, ends 1.5 velocity heads, 7 bar(a), 20 degC',
  mark: 'computed',
} as const;

/** Bore in mm, length in m, C in dm3/(s bar), b from the flow at a pressure ratio of 0.7. */
const tubes = [
  [2.5, 1, 0.3875, 0.239],
  [4, 0.3, 1.5458, 0.45],
  [4, 1, 1.1925, 0.32],
  [4, 2, 0.9522, 0.224],
  [6, 2, 2.529, 0.294],
  [6, 5, 1.8224, 0.166],
  [8, 2, 4.9699, 0.34],
  [8, 5, 3.7077, 0.215],
] as const;

export const tubeConductanceCases: readonly SheetCase[] = tubes.flatMap(([bore, length, c, b]) => [
  {
    name: `${length} m of ${bore} mm: a pipe with friction has C ${c} dm3/(s bar)`,
    source: script,
    inputs: { bore: bore / 1000, length },
    outputs: { conductance: c * 1e-8 },
    tolerance: { relative: 0.06, reason: 'a fit against a pipe whose end losses are taken as usual' },
    notes: ['TUBE_FROM_MEMORY'],
  },
  {
    name: `${length} m of ${bore} mm: its flow at a pressure ratio of 0.7 is that of b ${b}`,
    source: script,
    inputs: { bore: bore / 1000, length },
    outputs: { criticalRatio: b },
    tolerance: { absolute: 0.07, reason: 'b of a tube depends on where it is taken: 0.17 to 0.22 in one' },
  },
]);

import type { SheetCase } from '../sheet-case.ts';
import { hydraulicsVignette } from './sources.ts';

export const drainCapacityCases: readonly SheetCase[] = [
  {
    name: '8 in full, n 0.013, fall 0.005: 0.854 ft3/s, 2.448 ft/s',
    source: { title: 'public worked sheet for an 8 in pipe flowing full', place: 'result', mark: 'read' },
    inputs: { bore: 0.2032, slope: 0.005, manning: 0.013, filling: 1 },
    outputs: { flow: 0.024182587, fullFlow: 0.024182587, velocity: 0.74615 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
    notes: ['DRAIN_FULL'],
  },
  {
    name: 'hydraulics vignette: 0.2 m at a depth of 0.15783 m',
    source: hydraulicsVignette,
    inputs: { bore: 0.2, slope: 0.001, manning: 0.013, filling: 0.15783 / 0.2 },
    outputs: { flow: 0.01, velocity: 0.3761, area: 0.02659, hydraulicRadius: 0.0608 },
    tolerance: { relative: 1e-3, reason: 'three to four printed digits' },
    notes: ['DRAIN_SLOW'],
  },
  ...(
    [
      [0.036, 0.01, 0.22],
      [0.046, 0.01, 0.43],
      [0.071, 0.02, 1.93],
      [0.104, 0.02, 5.22],
      [0.152, 0.01, 10.3],
    ] as const
  ).map(([bore, slope, litres]) => ({
    name: `half full ${bore} m at a fall of ${slope}, n 0.010`,
    source: {
      title: "Manning's equation, table of half-full drains",
      place: 'independent script',
      mark: 'computed' as const,
    },
    inputs: { bore, slope, manning: 0.01, filling: 0.5 },
    outputs: { flow: litres * 1e-3 },
    tolerance: { relative: 2e-2, reason: 'two to three printed digits' },
  })),
];

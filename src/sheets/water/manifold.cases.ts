import type { SheetCase } from '../sheet-case.ts';

export const manifoldCases: readonly SheetCase[] = [
  ...(
    [
      [1, 31.466],
      [6, 27.116],
      [10, 22.361],
      [12, 20.244],
    ] as const
  ).map(([open, litresPerMinute]) => ({
    name: `lumped manifold, ${open} of 12 lanes open`,
    source: {
      title: 'two square-law resistances, hand calculation',
      place: 'R_v 0.002, R_c 2e-5 bar/(L/min)2, 2 bar',
      mark: 'computed' as const,
    },
    inputs: {
      pressureDifference: 200000,
      kv: 0.06 * Math.sqrt(500),
      commonKv: 0.06 * Math.sqrt(50000),
      lanes: 12,
      open,
      density: 1000,
    },
    outputs: {
      laneFlow: litresPerMinute / 60000,
      flow: (open * litresPerMinute) / 60000,
      aloneOverAll: 31.466 / 20.244,
      designIndex: 1.44,
    },
    tolerance: { relative: 1e-4, reason: 'five printed digits' },
  })),
];

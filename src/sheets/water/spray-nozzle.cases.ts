import type { SheetCase } from '../sheet-case.ts';

export const sprayNozzleCases: readonly SheetCase[] = [
  ...(
    [
      [0.5, 1.5, 7.071],
      [0.5, 5, 12.91],
      [0.46, 1.5, 7.27],
      [0.46, 5, 12.649],
      [0.44, 1.5, 7.371],
      [0.44, 5, 12.52],
    ] as const
  ).map(([exponent, bar, litresPerMinute]) => ({
    name: `10 L/min at 3 bar, taken to ${bar} bar with exponent ${exponent}`,
    source: {
      title: 'technical pages of nozzle makers',
      place: 'exponents read, numbers computed',
      mark: 'computed' as const,
    },
    inputs: { ratedFlow: 10 / 60000, ratedPressure: 300000, pressure: bar * 1e5, exponent },
    outputs: { flow: litresPerMinute / 60000 },
    tolerance: { relative: 5e-4, reason: 'four printed digits' },
  })),
];

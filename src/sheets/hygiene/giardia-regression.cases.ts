import type { SheetCase } from '../sheet-case.ts';
import { epaTables, script } from './sources.ts';

const inputs = (celsius: number, milligrams: number, acidity: number) => ({
  temperature: celsius + 273.15,
  chlorine: milligrams / 1000,
  acidity,
});

export const giardiaRegressionCases: readonly SheetCase[] = [
  ...(
    [
      [5, 1, 7, 149],
      [10, 2, 8, 182],
      [15, 1.2, 7.5, 92],
      [20, 3, 7, 68],
      [25, 1, 7, 37],
      [0.5, 1, 7.5, 253],
    ] as const
  ).map(([celsius, milligrams, acidity, ct]) => ({
    name: `${celsius} degC, ${milligrams} mg/L, pH ${acidity}: the table prints CT ${ct}, the formula lies above it`,
    source: epaTables,
    inputs: inputs(celsius, milligrams, acidity),
    outputs: { needed: ct * 0.06 },
    tolerance: {
      relative: 0.14,
      reason: 'the formula is the cautious substitute, up to 14 % above the table',
    },
    notes: ['CT_REGRESSION_HIGH'],
  })),
  ...(
    [
      [5, 1, 7, 161.17577],
      [15, 1.2, 7.5, 100.62408],
    ] as const
  ).map(([celsius, milligrams, acidity, ct]) => ({
    name: `${celsius} degC, ${milligrams} mg/L, pH ${acidity}: the written formula gives ${ct}`,
    source: script,
    inputs: inputs(celsius, milligrams, acidity),
    outputs: { needed: ct * 0.06 },
    tolerance: { relative: 1e-6, reason: 'eight printed digits' },
  })),
];

import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const causticPhCases: readonly SheetCase[] = (
  [
    [0.4, 9],
    [4, 10],
    [40, 11],
    [1265, 12.5],
  ] as const
).map(([milligrams, acidity]) => ({
  name: `${milligrams} mg/L in pure water: pH ${acidity}`,
  source: script,
  inputs: { concentration: milligrams / 1000 },
  outputs: { acidity },
  tolerance: { absolute: 5e-3, reason: 'printed with one decimal' },
  notes: ['UNBUFFERED'],
}));

import type { SheetCase } from '../sheet-case.ts';
import { causticOrdinance } from './sources.ts';

const inputs = (minutes: number, fahrenheit: number) => ({
  time: minutes * 60,
  temperature: ((fahrenheit - 32) * 5) / 9 + 273.15,
});
const points = [
  [3, 170, 0.57],
  [3, 120, 4.27],
  [5, 130, 2.16],
  [5, 160, 0.64],
  [7, 140, 1.19],
  [7, 120, 2.66],
] as const;

/** The table is from memory, so that none of these counts as a check. */
export const causticEquivalentCases: readonly SheetCase[] = [
  ...points.map(([minutes, fahrenheit, percent]) => ({
    name: `table: ${minutes} min at ${fahrenheit} degF ask ${percent} %`,
    source: causticOrdinance,
    inputs: { ...inputs(minutes, fahrenheit), caustic: percent / 100 },
    outputs: { equal: percent / 100, ratio: 1 },
    tolerance: { relative: 1e-9, reason: 'a printed figure itself' },
    notes: ['CAUSTIC_TABLE_MEMORY'],
  })),
  ...points.map(([minutes, fahrenheit, percent]) => ({
    name: `fit: ${minutes} min at ${fahrenheit} degF ask ${percent} %`,
    source: causticOrdinance,
    inputs: { ...inputs(minutes, fahrenheit), method: 'fit' },
    outputs: { equal: percent / 100 },
    tolerance: { relative: 9.5e-3, reason: 'worst error of the fit' },
  })),
];

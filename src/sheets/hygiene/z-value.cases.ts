import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const fahrenheit = (degrees: number): number => ((degrees - 32) * 5) / 9 + 273.15;

export const zValueCases: readonly SheetCase[] = [
  {
    name: 'D 10 min at 235 degF and 0.1 min at 270 degF: z 17.5 degF, 9.72 K',
    source: script,
    inputs: { colder: fahrenheit(235), dColder: 600, warmer: fahrenheit(270), dWarmer: 6 },
    outputs: { z: 9.72 },
    tolerance: { relative: 5e-3, reason: 'three printed digits' },
  },
  {
    name: '170 degF for 15 min and 200 degF for 5 min imply z = 35 K',
    source: script,
    inputs: { colder: fahrenheit(170), dColder: 900, warmer: fahrenheit(200), dWarmer: 300 },
    outputs: { z: 35 },
    tolerance: { relative: 5e-3, reason: 'two printed digits' },
    notes: ['Z_NOT_OF_A_GERM'],
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { dValueArticle } from './sources.ts';

const fahrenheit = (degrees: number): number => ((degrees - 32) * 5) / 9 + 273.15;
const germ = { d: 600, reference: fahrenheit(235), z: 17.5 / 1.8, logs: 6 };

export const dValueCases: readonly SheetCase[] = [
  {
    name: 'D 10 min at 235 degF: 6 logs take 60 min',
    source: dValueArticle,
    inputs: { ...germ, temperature: fahrenheit(235), time: 1200 },
    outputs: { decimalTime: 600, neededTime: 3600, reached: 2 },
    tolerance: { relative: 5e-3, reason: 'two printed digits' },
  },
  {
    name: 'D 0.1 min at 270 degF: 6 logs take 0.6 min',
    source: dValueArticle,
    inputs: { ...germ, temperature: fahrenheit(270) },
    outputs: { decimalTime: 6, neededTime: 36 },
    tolerance: { relative: 5e-3, reason: 'two printed digits' },
  },
];

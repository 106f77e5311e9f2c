import type { SheetCase } from '../sheet-case.ts';
import { dValueArticle, script } from './sources.ts';

const fahrenheit = (degrees: number): number => ((degrees - 32) * 5) / 9 + 273.15;

export const heatLogCases: readonly SheetCase[] = [
  {
    name: 'D 10 min at 235 degF: 60 min there are 6 logs',
    source: dValueArticle,
    inputs: {
      times: [0, 3600],
      temperatures: [fahrenheit(235), fahrenheit(235)],
      d: 600,
      reference: fahrenheit(235),
      z: 9.72,
    },
    outputs: { reached: 6 },
    tolerance: { relative: 5e-3, reason: 'two printed digits' },
  },
  {
    name: 'the same germ: 0.6 min at 270 degF are 6 logs, 60 min at 235 degF',
    source: dValueArticle,
    inputs: {
      times: [0, 36],
      temperatures: [fahrenheit(270), fahrenheit(270)],
      d: 600,
      reference: fahrenheit(235),
      z: 17.5 / 1.8,
    },
    outputs: { reached: 6, time: 3600 },
    tolerance: { relative: 5e-3, reason: 'two printed digits' },
  },
  {
    name: 'readings at 60 and 70 degC, z 10 K: the trapezoid of the rate is 5.5 times the span, not 3.16',
    source: script,
    inputs: { times: [0, 100], temperatures: [333.15, 343.15], d: 100, reference: 333.15, z: 10 },
    outputs: { time: 550, reached: 5.5 },
    tolerance: { relative: 1e-9, reason: 'exact' },
  },
];

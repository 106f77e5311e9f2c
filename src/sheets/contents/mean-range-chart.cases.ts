import type { SheetCase } from '../sheet-case.ts';
import { shewhart, statisticsScript } from './fill-sources.ts';

/** Two subgroups of one range, so that the limits of the range are D3 and D4 themselves. */
const unitRange = (size: number): number[] => {
  const group = Array.from({ length: size }, (_, i) => (i === 0 ? 10e-6 : 11e-6));
  return [...group, ...group];
};

/** NIST StRD, SiRstv: five instruments, five readings each, 1 ohm written as 1 mL. */
export const resistances = [
  196.3052, 196.124, 196.189, 196.2569, 196.3403, 196.3042, 196.3825, 196.1669, 196.3257, 196.0422, 196.1303,
  196.2005, 196.2889, 196.0343, 196.1811, 196.2795, 196.1748, 196.1494, 196.1485, 195.9885, 196.2119,
  196.1051, 196.185, 196.0052, 196.209,
].map((ohm) => ohm * 1e-6);

export const meanRangeChartCases: readonly SheetCase[] = [
  {
    name: 'printed table, n = 5: A2 0.577, D4 2.114 (limits of a mean of 10.8 and a range of 1)',
    source: shewhart,
    inputs: { values: unitRange(5), size: '5' },
    outputs: { meanLow: 10.223e-6, meanHigh: 11.377e-6, rangeLow: 0, rangeHigh: 2.114e-6 },
    tolerance: { absolute: 0.0006e-6, reason: 'three printed digits' },
  },
  {
    name: 'printed table, n = 2: A2 1.880, D4 3.267',
    source: shewhart,
    inputs: { values: unitRange(2), size: '2' },
    outputs: { meanLow: 8.62e-6, meanHigh: 12.38e-6, rangeLow: 0, rangeHigh: 3.267e-6 },
    tolerance: { absolute: 0.0006e-6, reason: 'three printed digits' },
  },
  {
    name: 'NIST StRD SiRstv as five subgroups: mean 196.189156, mean range 0.26178',
    source: statisticsScript,
    inputs: { values: resistances, size: '5' },
    outputs: {
      grandMean: 196.189156e-6,
      meanRange: 0.26178e-6,
      meanHigh: 196.340156e-6,
      rangeHigh: 0.553534e-6,
      spread: 0.1125486e-6,
      outside: 0,
      firstOutside: 0,
    },
    tolerance: { relative: 2e-6, absolute: 1e-15, reason: 'six printed digits; counts are exact' },
  },
];

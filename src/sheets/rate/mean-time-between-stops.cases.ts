import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './trial-sources.ts';

const hour = 3600;

/** Confidence, stops, factors of T/k for both limits. */
const factors = [
  [0.9, 1, 0.2108, 19.4957],
  [0.9, 2, 0.3177, 5.6281],
  [0.9, 3, 0.3869, 3.6689],
  [0.9, 4, 0.437, 2.9276],
  [0.9, 5, 0.4756, 2.5379],
  [0.9, 10, 0.5895, 1.8432],
  [0.6, 1, 0.334, 4.4814],
  [0.6, 2, 0.4674, 2.426],
  [0.6, 5, 0.6324, 1.6184],
] as const;

export const meanTimeBetweenStopsCases: readonly SheetCase[] = [
  {
    name: '800 h with two stops, 90 %: 127.07 to 2 251.23 h',
    source: statisticsScript,
    inputs: { running: 800 * hour, stops: 2, endedBy: 'time', confidence: 0.9 },
    outputs: {
      mean: 400 * hour,
      low: 127.06896827442834 * hour,
      high: 2251.228610625704 * hour,
    },
    tolerance: { relative: 1e-12, reason: 'printed digits' },
    notes: ['STOPS_STEADY'],
  },
  {
    name: 'the same ended by the second stop: from 168.64 h on',
    source: statisticsScript,
    inputs: { running: 800 * hour, stops: 2, endedBy: 'stop', confidence: 0.9 },
    outputs: { low: 168.63888015743993 * hour, high: 2251.228610625704 * hour },
    tolerance: { relative: 1e-12, reason: 'printed digits' },
  },
  ...factors.map(
    ([confidence, stops, low, high]): SheetCase => ({
      name: `${stops} stops, ${100 * confidence} %: ${low} to ${high} of the mean`,
      source: statisticsScript,
      inputs: { running: stops, stops, endedBy: 'time', confidence },
      outputs: { mean: 1, low, high },
      tolerance: { absolute: 5.1e-5, reason: 'four printed digits after the point' },
    }),
  ),
];

import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './trial-sources.ts';

const minute = 60;
const stops = { betweenStops: 30 * minute, clearing: 1.5 * minute } as const;

export const availabilityShownCases: readonly SheetCase[] = [
  {
    name: 'half an hour between stops of 1.5 min, over 8 h: 0.952381, spread 0.0164301, over 0.925356 at 95 %',
    source: statisticsScript,
    inputs: { ...stops, duration: 480 * minute, confidence: 0.95 },
    outputs: { availability: 0.9523809523809523, spread: 0.01643013236529415, lower: 0.9253557895686054 },
    tolerance: { relative: 1e-12, reason: 'printed digits' },
  },
  {
    name: '40 000 simulated shifts of it spread by 0.01637',
    source: {
      title: 'simulation of running and standing times drawn at random, 40 000 shifts',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: { ...stops, duration: 480 * minute, confidence: 0.95 },
    outputs: { spread: 0.01637 },
    tolerance: { relative: 0.011, reason: 'three times the spread of a spread from 40 000 draws' },
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './trial-sources.ts';

const spread = 0.5559666256969827;

const wanted = (
  name: string,
  inputs: SheetCase['inputs'],
  halfWidth: number,
  firstGuess: number,
  runs: number,
): SheetCase => ({
  name: `${name}: ${firstGuess} runs by the first guess, ${runs} by their own t`,
  source: statisticsScript,
  inputs,
  outputs: { halfWidth, firstGuess, wanted: runs },
  tolerance: { relative: 1e-12, reason: 'counts are exact' },
});

export const runsWantedCases: readonly SheetCase[] = [
  wanted(
    'the ten delays of a bank to a tenth, 90 %',
    { mean: 2.031, spread, runs: 10, relative: 0.1, confidence: 0.9 },
    0.18463636363636363,
    31,
    27,
  ),
  wanted(
    'the same to a twentieth, 95 %',
    { mean: 2.031, spread, runs: 10, relative: 0.05, confidence: 0.95 },
    0.09671428571428572,
    170,
    130,
  ),
  {
    ...wanted(
      'five shifts of 2 300 bottles, 41 from one to the other, to a hundredth, 99 %',
      { mean: 2300, spread: 41, runs: 5, relative: 0.01, confidence: 0.99 },
      22.77227722772277,
      69,
      26,
    ),
    notes: ['RUNS_SPREAD_UNSURE'],
  },
];

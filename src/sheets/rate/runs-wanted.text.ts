import type { SheetText } from '../sheet-text.ts';
import { trialWords } from './trial-words.text.ts';
import { wholeProblem } from './whole.text.ts';

export const runsWantedText: SheetText = {
  en: {
    title: 'Runs that a mean wants',
    about: 'How many shifts must be run or simulated until their mean is known to a share of itself.',
    inputs: {
      mean: 'Mean of the first runs',
      spread: 'Standard deviation of them',
      runs: 'Runs so far',
      relative: 'Half width wanted, as a share of the mean',
      confidence: trialWords.confidence,
    },
    outputs: {
      halfWidth: 'Half width to reach',
      firstGuess: 'Runs in all, first guess',
      wanted: 'Runs in all, if the spread stays',
    },
    notes: {
      RUNS_SPREAD_UNSURE: 'The spread of so few runs is itself unsure: run the first guess, then ask again.',
    },
    problems: {
      ...wholeProblem,
      RUNS_MEAN_NEAR_NONE:
        '{path}: {given} is so small beside its spread that no number of runs shows it to a share of itself. Accepted: {allowed}, or the same below zero.',
    },
  },
};

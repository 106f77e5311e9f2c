import type { SheetText } from '../sheet-text.ts';
import { trialNotes, trialWords } from './trial-words.text.ts';

export const intervalOfRunsText: SheetText = {
  en: {
    title: 'Mean of several runs, with its interval',
    about:
      'What several shifts, real or simulated, say of the mean of one figure: bottles of a shift, minutes lost, efficiency.',
    inputs: { values: 'Figure of each run', confidence: trialWords.confidence },
    outputs: {
      mean: 'Mean',
      spread: 'Standard deviation of a run',
      halfWidth: 'Half width of the interval',
      low: 'Lower end',
      high: 'Upper end',
    },
    notes: { RUNS_FEW: trialNotes.RUNS_FEW },
  },
};

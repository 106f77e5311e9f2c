import type { SheetText } from '../sheet-text.ts';
import { trialWords } from './trial-words.text.ts';

export const meanCycleBoundText: SheetText = {
  en: {
    title: 'Rate that timed cycles show',
    about:
      'Mean of cycles timed one after the other, the longest that the true mean may be, and the rate of each.',
    inputs: {
      cycles: 'Cycles as timed',
      bottles: 'Bottles in a cycle',
      confidence: trialWords.confidenceOneSided,
    },
    outputs: {
      mean: 'Mean cycle',
      spread: 'Standard deviation of a cycle',
      upper: 'Mean cycle, at most',
      rate: 'Rate',
      rateBound: 'Rate, at least',
    },
    notes: {
      CYCLES_NO_STOP: 'Shows the running rate only: stops between the cycles are not in it.',
      CYCLES_FEW: 'Cycles timed: {cycles}. Thirty are wanted to see which of them were held.',
    },
  },
};

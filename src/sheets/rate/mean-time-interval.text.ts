import type { SheetText } from '../sheet-text.ts';
import { trialWords } from './trial-words.text.ts';

export const meanTimeIntervalText: SheetText = {
  en: {
    title: 'Mean of timed cycles, with its interval',
    about:
      'Times from tap to tap of a watch: their mean and the interval that holds it, to be set against the longest mean that was agreed.',
    inputs: { times: 'Times, one after the other', confidence: trialWords.confidence },
    outputs: {
      mean: 'Mean',
      spread: 'Standard deviation of a time',
      halfWidth: 'Half width of the interval',
      low: 'Lower end',
      high: 'Upper end',
    },
    notes: {
      TIMES_NO_STOP: 'No stop may be among them: a cycle with a stop says nothing of the cycle.',
      TIMES_FEW:
        'From only {times} times: what comes seldom may not be among them, and the interval is wide.',
    },
  },
};

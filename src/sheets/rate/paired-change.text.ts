import type { SheetText } from '../sheet-text.ts';
import { trialWords } from './trial-words.text.ts';

export const pairedChangeText: SheetText = {
  en: {
    title: 'What a change is worth, run by run',
    about:
      'Difference that one change makes, from runs that met the same stops and the same luck without it and with it.',
    inputs: {
      before: 'Figure of each run without the change',
      after: 'Figure of the same runs with it',
      confidence: trialWords.confidence,
    },
    outputs: {
      mean: 'Mean difference',
      spread: 'Standard deviation of a difference',
      halfWidth: 'Half width of the interval',
      low: 'Lower end',
      high: 'Upper end',
    },
    notes: {
      CHANGE_NOT_SHOWN: 'The interval holds zero: these runs do not show that the change does anything.',
    },
  },
};

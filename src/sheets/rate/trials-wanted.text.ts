import type { SheetText } from '../sheet-text.ts';
import { trialWords } from './trial-words.text.ts';
import { wholeProblem } from './whole.text.ts';

export const trialsWantedText: SheetText = {
  en: {
    title: 'Bottles or cycles that show a share',
    about:
      'How many must be tried without a bad one, or with a few at most, to show that fewer than a share are bad.',
    inputs: {
      share: 'Share of bad ones to rule out',
      allowed: 'Bad ones allowed in the trial',
      confidence: trialWords.confidenceOneSided,
    },
    outputs: { trials: 'Bottles or cycles to try' },
    notes: {
      TRIALS_FIXED_BEFORE:
        'Both numbers are agreed before the trial. One that is made longer until it passes shows less.',
    },
    problems: wholeProblem,
  },
};

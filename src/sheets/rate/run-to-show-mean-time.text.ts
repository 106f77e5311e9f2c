import type { SheetText } from '../sheet-text.ts';
import { trialNotes, trialWords } from './trial-words.text.ts';
import { wholeProblem } from './whole.text.ts';

export const runToShowMeanTimeText: SheetText = {
  en: {
    title: 'Proof run for a mean time between stops',
    about:
      'How long the line must run with few enough stops to show an agreed mean time between them, and how likely it is to pass.',
    inputs: {
      agreed: 'Agreed mean time between stops',
      allowed: 'Stops allowed in the run',
      confidence: trialWords.confidenceOneSided,
      expected: 'Mean time that the line is thought to have',
    },
    outputs: { running: 'Running time, stops not counted', passing: 'Chance to pass' },
    notes: {
      STOPS_STEADY: trialNotes.STOPS_STEADY,
      RUN_LIKELY_FAILS:
        'More likely to fail than to pass: allow more stops over a longer run, or agree less.',
    },
    problems: wholeProblem,
  },
};

import type { SheetText } from '../sheet-text.ts';
import { trialWords } from './trial-words.text.ts';
import { wholeProblem } from './whole.text.ts';

export const shareBoundsText: SheetText = {
  en: {
    title: 'Share of bottles, from a count',
    about:
      'What a count of good or of bad bottles in a trial says of the share among all that the line will make.',
    inputs: {
      found: 'Bottles found good (or bad)',
      looked: 'Bottles looked at',
      confidence: trialWords.confidence,
    },
    outputs: {
      share: 'Share found',
      least: 'At least, one-sided, exact',
      most: 'At most, one-sided, exact',
      low: 'Lower limit, two-sided, exact',
      high: 'Upper limit, two-sided, exact',
      scoreLow: 'Lower limit, two-sided, by score',
      scoreHigh: 'Upper limit, two-sided, by score',
    },
    notes: {
      SHARE_AGREE_BOUND:
        'What was found and what is shown differ. Agree beforehand which counts; for an acceptance the one-sided exact bound is usual.',
    },
    problems: {
      ...wholeProblem,
      FOUND_OVER_LOOKED: '{path}: {given} are more than were looked at. Accepted: {allowed}.',
    },
  },
};

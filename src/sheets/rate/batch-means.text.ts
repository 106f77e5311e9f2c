import type { SheetText } from '../sheet-text.ts';
import { trialWords } from './trial-words.text.ts';
import { wholeProblem } from './whole.text.ts';

export const batchMeansText: SheetText = {
  en: {
    title: 'Mean of one long run, with its interval',
    about:
      'One long run is parted into batches whose means stand for runs of their own, once its beginning is left out.',
    inputs: {
      values: 'Values in order of time',
      warmUp: 'Values left out at the beginning',
      batches: 'Batches',
      confidence: trialWords.confidence,
    },
    outputs: {
      means: 'Means of the batches',
      batchSize: 'Values in a batch',
      mean: 'Mean',
      halfWidth: 'Half width of the interval',
      low: 'Lower end',
      high: 'Upper end',
      correlation: 'Correlation of neighbouring batches',
    },
    notes: {
      BATCHES_FOLLOW_EACH_OTHER:
        'Neighbouring batches follow each other, so that the interval is too narrow: take longer ones.',
      BATCHES_FEW:
        'Fewer than twenty batches: the interval is wide, and whether they follow each other is hard to see.',
    },
    problems: {
      ...wholeProblem,
      BATCHES_TOO_MANY: '{path}: {given} batches are more than there are values. Accepted: {allowed}.',
    },
  },
};

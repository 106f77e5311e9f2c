import type { SheetText } from '../sheet-text.ts';
import { trialNotes, trialWords } from './trial-words.text.ts';

export const runToShowAvailabilityText: SheetText = {
  en: {
    title: 'Proof run for an availability',
    about: 'How long a line that is better than agreed must run until its run shows it.',
    inputs: {
      betweenStops: 'Mean running time between stops, expected',
      clearing: 'Mean time to clear a stop, expected',
      agreed: 'Agreed availability',
      confidence: trialWords.confidenceOneSided,
      passing: 'Chance with which such a line is to pass',
    },
    outputs: {
      margin: 'Margin over the agreed availability',
      duration: 'Duration of the run, stops and all',
      stops: 'Stops to be expected in it',
    },
    notes: {
      AVAILABILITY_NORMAL: trialNotes.AVAILABILITY_NORMAL,
      RUN_PASSES_BY_HALVES:
        'With this length a line as good as expected still fails every second time. Say how surely it is to pass.',
    },
    problems: {
      AVAILABILITY_BELOW_AGREED:
        '{path}: {given} is no less than such stops leave, so that no run will show it. Accepted: {allowed}.',
    },
  },
};

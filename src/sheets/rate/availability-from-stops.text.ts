import type { SheetText } from '../sheet-text.ts';
import { trialNotes, trialWords } from './trial-words.text.ts';
import { wholeProblem } from './whole.text.ts';

export const availabilityFromStopsText: SheetText = {
  en: {
    title: 'Availability that a run shows by its stops',
    about:
      'Share of time that the line ran, and the availability that so few stops show. Wants one stop at least.',
    inputs: {
      running: 'All running times together',
      stopped: 'All stops together',
      stops: trialWords.stops,
      confidence: trialWords.confidenceOneSided,
    },
    outputs: {
      availability: 'Share of time that it ran',
      factor: 'Quantile of F',
      lower: 'Availability, at least',
    },
    notes: {
      STOPS_STEADY: trialNotes.STOPS_STEADY,
      AVAILABILITY_CLEARED:
        'Counted in pairs of a running time and the stop after it: leave out what ran after the last stop.',
    },
    problems: wholeProblem,
  },
};

import type { SheetText } from '../sheet-text.ts';
import { trialNotes, trialWords } from './trial-words.text.ts';
import { wholeProblem } from './whole.text.ts';

export const meanTimeShownText: SheetText = {
  en: {
    title: 'Mean time between stops that a trial shows',
    about:
      'Lower bound of the mean running time between stops, from the few stops of a trial, or from none. It is less than what was seen.',
    inputs: {
      running: 'Time that the line ran',
      stops: trialWords.stops,
      endedBy: 'What ended the trial',
      confidence: trialWords.confidenceOneSided,
    },
    outputs: { factor: 'Divisor of the running time', shown: 'Mean time between stops, at least' },
    options: { endedBy: { time: 'its time was up', stop: 'its last stop' } },
    notes: { STOPS_STEADY: trialNotes.STOPS_STEADY },
    problems: {
      ...wholeProblem,
      STOP_ENDED_NONE: '{path}: a trial that was ended by a stop has one at least. Accepted: {allowed}.',
    },
  },
};

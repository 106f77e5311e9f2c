import type { SheetText } from '../sheet-text.ts';
import { meanTimeShownText } from './mean-time-shown.text.ts';
import { trialNotes, trialWords } from './trial-words.text.ts';

export const meanTimeBetweenStopsText: SheetText = {
  en: {
    title: 'Mean time between stops, with its limits',
    about:
      'Running time over the stops that fell in it, and how far off the true mean may be. Wants one stop at least.',
    inputs: {
      running: 'Time that the line ran',
      stops: trialWords.stops,
      endedBy: 'What ended the trial',
      confidence: trialWords.confidence,
    },
    outputs: { mean: 'Mean time between stops', low: trialWords.low, high: trialWords.high },
    options: meanTimeShownText.en.options ?? {},
    notes: { STOPS_STEADY: trialNotes.STOPS_STEADY },
    problems: meanTimeShownText.en.problems ?? {},
  },
};

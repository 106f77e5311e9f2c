import type { SheetText } from '../sheet-text.ts';
import { trialNotes, trialWords } from './trial-words.text.ts';

export const availabilityShownText: SheetText = {
  en: {
    title: 'Availability, and what a run of it shows',
    about:
      'Share of time that the line runs, from the mean time between stops and the mean time to clear one, and how far a run of some length may lie from it.',
    inputs: {
      betweenStops: 'Mean running time between stops',
      clearing: 'Mean time to clear a stop',
      duration: 'Duration of the run',
      confidence: trialWords.confidenceOneSided,
    },
    outputs: {
      availability: 'Availability',
      spread: 'Standard deviation of what a run shows',
      lower: 'Availability, at least',
    },
    notes: { AVAILABILITY_NORMAL: trialNotes.AVAILABILITY_NORMAL },
  },
};

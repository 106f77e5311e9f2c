import type { SheetText } from '../sheet-text.ts';
import { trialWords } from './trial-words.text.ts';
import { waitingBeforeStationText } from './waiting-before-station.text.ts';

export const runLengthForWaitingText: SheetText = {
  en: {
    title: 'How long a queue of bottles must be watched',
    about:
      'Time of running, or of simulated running, until the mean number of bottles before a station is known to a share of itself.',
    inputs: {
      arrivals: 'Rate at which bottles come',
      pace: 'Rate of the station',
      relative: 'Half width wanted, as a share of the mean',
      confidence: trialWords.confidence,
    },
    outputs: {
      present: 'Mean number present',
      variance: 'Variance of the mean over a time, times that time',
      length: 'Time to watch',
    },
    notes: {
      WAIT_RUN_SETTLED:
        'Counted from where the line has settled: what came before that is left out. A load near one wants days.',
    },
    problems: waitingBeforeStationText.en.problems ?? {},
  },
};

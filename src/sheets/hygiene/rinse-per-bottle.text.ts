import type { SheetText } from '../sheet-text.ts';
import { problemsOf } from './notes.text.ts';

export const rinsePerBottleText: SheetText = {
  en: {
    title: 'Rinse water for a bottle',
    about: 'Water that one bottle gets in a rinse zone, from the flow of the zone and the index.',
    inputs: {
      flow: 'Flow of the zone',
      index: 'Index',
      lanes: 'Lanes, bottles in an index',
      dead: 'Dead time of an index',
      timeOut: 'Time after which the spray shuts',
    },
    outputs: { running: 'Water for a bottle, spray runs on', gated: 'Water for a bottle, gated spray' },
    notes: {
      RINSE_LESS_WHEN_FAST:
        'A faster index leaves less water for a bottle: judge the rinse at the fastest one.',
    },
    problems: problemsOf('HYGIENE_NOT_WHOLE'),
  },
};

import type { SheetText } from '../sheet-text.ts';
import { stationWords } from './room-words.text.ts';
import { wholeProblem } from './whole.text.ts';

export const twoStationsByRowText: SheetText = {
  en: {
    title: 'Two stations that are ready or not row by row',
    about:
      'Two stations with places between them, each of which misses a row now and then without standing for long: rows that come through.',
    inputs: {
      readyFirst: 'First station: share of rows for which it is ready',
      readySecond: 'Second station: share of rows for which it is ready',
      room: 'Places for rows between them',
    },
    outputs: {
      efficiency: 'Share of rows that come through',
      starved: stationWords.starved,
      blocked: stationWords.blocked,
    },
    notes: {
      ROOM_NO_MEMORY:
        'Each row for itself: a row missed makes the next no likelier to be missed. Stops that last want the other sheets of two stations.',
    },
    problems: wholeProblem,
  },
};

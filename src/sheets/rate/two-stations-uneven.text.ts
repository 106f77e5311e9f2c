import type { SheetText } from '../sheet-text.ts';
import { stationWords } from './room-words.text.ts';
import { wholeProblem } from './whole.text.ts';

export const twoStationsUnevenText: SheetText = {
  en: {
    title: 'Two stations with very uneven times',
    about:
      'Two stations that never stop but need now little and now much time for a bottle, as by hand, with places between them: what comes through.',
    inputs: {
      first: 'Rate of the first station alone',
      second: 'Rate of the second station alone',
      room: stationWords.room,
    },
    outputs: {
      throughput: 'Rate that comes through',
      starved: stationWords.starved,
      blocked: stationWords.blocked,
    },
    notes: {
      ROOM_VERY_UNEVEN:
        'Times as uneven as the gaps between chance events, the worst that is usual. Steadier stations lose less.',
    },
    problems: wholeProblem,
  },
};

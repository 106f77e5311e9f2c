import type { SheetText } from '../sheet-text.ts';
import { roomNotes, stationWords } from './room-words.text.ts';

export const twoStationsInTimeText: SheetText = {
  en: {
    title: 'Two stations alike with a conveyor between, by times',
    about:
      'Two stations of the same rate that stop as often and as long as each other, with places for bottles between them: what comes through.',
    inputs: {
      betweenStops: 'Mean running time between stops of each',
      clearing: 'Mean time to clear a stop',
      rate: 'Rate of each',
      room: stationWords.room,
    },
    outputs: {
      efficiency: stationWords.efficiency,
      throughput: 'Rate that comes through',
      withoutRoom: stationWords.withoutRoom,
      endlessRoom: stationWords.endlessRoom,
    },
    notes: { ROOM_STOPS_ONLY_RUNNING: roomNotes.ROOM_STOPS_ONLY_RUNNING },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { roomNotes, stationWords } from './room-words.text.ts';
import { wholeProblem } from './whole.text.ts';

export const twoStationsWithRoomText: SheetText = {
  en: {
    title: 'Two stations with a conveyor between, by cycles',
    about:
      'Two stations that work in one cycle and stop now and then, with places for bottles between them: what comes through, and how much more room would bring.',
    inputs: {
      stopFirst: 'First station: chance that it stops in a cycle',
      clearFirst: 'First station: chance that a stop ends in a cycle',
      stopSecond: 'Second station: chance that it stops in a cycle',
      clearSecond: 'Second station: chance that a stop ends in a cycle',
      room: stationWords.room,
    },
    outputs: {
      efficiency: stationWords.efficiency,
      starved: stationWords.starved,
      blocked: stationWords.blocked,
      level: stationWords.level,
      withoutRoom: stationWords.withoutRoom,
      endlessRoom: stationWords.endlessRoom,
    },
    notes: {
      ROOM_STOPS_ONLY_RUNNING: roomNotes.ROOM_STOPS_ONLY_RUNNING,
      ROOM_NONE_NEARLY:
        'The figure with no room leaves out that both may stop in the same cycle, which is not rare here.',
    },
    problems: wholeProblem,
  },
};

import type { SheetText } from '../sheet-text.ts';
import { roomNotes } from './room-words.text.ts';

export const waitingBeforeStationText: SheetText = {
  en: {
    title: 'Bottles waiting before a station',
    about:
      'How many bottles gather before a station of one head and how long they wait, when they come at random and there is room for all.',
    inputs: {
      arrivals: 'Rate at which bottles come',
      pace: 'Rate of the station',
      variation: 'How much its time for a bottle varies (0 steady, 1 very uneven)',
    },
    outputs: {
      load: 'Load of the station',
      wait: 'Mean wait',
      through: 'Mean time until the bottle leaves',
      waiting: 'Mean number waiting',
      present: 'Mean number with the one at the head',
    },
    notes: {
      WAIT_RANDOM_ARRIVALS: roomNotes.WAIT_RANDOM_ARRIVALS,
      WAIT_NEARLY_FULL: roomNotes.WAIT_NEARLY_FULL,
    },
    problems: {
      WAIT_GROWS:
        '{path}: {given} a second are no less than the station can do, so that the wait grows without end. Accepted: {allowed}.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { roomNotes } from './room-words.text.ts';
import { wholeProblem } from './whole.text.ts';

export const waitingLimitedRoomText: SheetText = {
  en: {
    title: 'Bottles waiting where room is limited',
    about:
      'A station of one or several heads with a few places before it: how often it is empty, how often full, what comes through and how long that waits.',
    inputs: {
      arrivals: 'Rate at which bottles come',
      pace: 'Rate of one head',
      heads: 'Heads',
      room: 'Places, with those at the heads',
    },
    outputs: {
      shares: 'Shares of time with 0, 1, 2 … bottles',
      empty: 'Share of time empty',
      full: 'Share of time full, when who comes is turned away',
      passed: 'Rate that comes through',
      present: 'Mean number present',
      waiting: 'Mean number waiting',
      through: 'Mean time until the bottle leaves',
      wait: 'Mean wait',
      use: 'Share of time that a head works',
    },
    notes: { WAIT_RANDOM_ARRIVALS: roomNotes.WAIT_RANDOM_ARRIVALS },
    problems: {
      ...wholeProblem,
      ROOM_UNDER_HEADS:
        '{path}: {given} places are fewer than the heads, each of which holds a bottle. Accepted: {allowed}.',
    },
  },
};

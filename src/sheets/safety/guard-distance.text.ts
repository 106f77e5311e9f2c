import type { SheetText } from '../sheet-text.ts';
import { editionWords } from './edition.ts';
import { notesOf } from './notes.text.ts';
import { reachThroughText } from './reach-through.text.ts';

export const guardDistanceText: SheetText = {
  en: {
    title: 'Distance of an interlocked guard',
    about:
      'Least distance from a guard that can be opened while the machine runs, without guard locking, to the danger.',
    inputs: {
      time: 'Stop time from the start of opening',
      opening: 'Time until the gap lets a part of the body in',
      gap: 'Gap before the stop signal comes',
      edition: 'Edition of the standard',
      added: 'Distance added, Z of 2024',
    },
    outputs: { intrusion: 'Reached through the gap', distance: 'Least distance' },
    options: { edition: editionWords },
    notes: {
      ...notesOf('CAUTION_GUARDING', 'DISTANCE_2010', 'DISTANCE_2024_SECOND_HAND', 'DISTANCE_STOP_MEASURED'),
      REACH_FROM_14: reachThroughText.en.notes.REACH_FROM_14!,
      GUARD_OPENING_COUNTED:
        'The time that opening takes is taken off: it must be measured with a quick hand, and the guard must not be sprung.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { editionWords } from './edition.ts';
import { notesOf } from './notes.text.ts';

export const parallelFieldDistanceText: SheetText = {
  en: {
    title: 'Distance of a field along the way in',
    about: 'Least distance from the edge of a level field to the danger, for a person who walks into it.',
    inputs: {
      time: 'Overall stop time',
      height: 'Height of the field over the floor',
      resolution: 'Resolution of the field',
      edition: 'Edition of the standard',
      added: 'Distance added, Z of 2024',
    },
    outputs: {
      leastHeight: 'Least height for the resolution',
      intrusion: 'Reached over',
      distance: 'Least distance',
    },
    options: { edition: editionWords },
    notes: {
      ...notesOf(
        'CAUTION_GUARDING',
        'DISTANCE_2010',
        'DISTANCE_2024_SECOND_HAND',
        'DISTANCE_STOP_MEASURED',
        'DISTANCE_OTHER_WAYS',
      ),
      FIELD_CREPT_UNDER: 'At this height a person may creep under unseen.',
    },
    problems: {
      FIELD_TOO_LOW: '{path}: at this resolution a foot passes unseen so low. Allowed: {allowed}.',
    },
  },
};

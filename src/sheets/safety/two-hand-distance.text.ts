import type { SheetText } from '../sheet-text.ts';
import { editionWords } from './edition.ts';
import { notesOf } from './notes.text.ts';

export const twoHandDistanceText: SheetText = {
  en: {
    title: 'Distance of a two-hand control',
    about: 'Least distance of the nearer button from the danger.',
    inputs: {
      time: 'Overall stop time',
      shrouding: 'Buttons',
      edition: 'Edition of the standard',
      added: 'Distance added, Z of 2024',
    },
    outputs: { intrusion: 'Reached in while still held', distance: 'Least distance' },
    options: {
      shrouding: { open: 'open', shrouded: 'shrouded so that no hand reaches in' },
      edition: editionWords,
    },
    notes: {
      ...notesOf('CAUTION_GUARDING', 'DISTANCE_2010', 'DISTANCE_2024_SECOND_HAND', 'DISTANCE_STOP_MEASURED'),
      TWO_HAND_ONE_PERSON: 'Keeps the hands of the one who holds it; nobody else.',
    },
  },
};

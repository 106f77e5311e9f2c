import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const beamDistanceText: SheetText = {
  en: {
    title: 'Distance of separate beams',
    about: 'Least distance of one to four beams that find a person walking in, and their heights.',
    inputs: { time: 'Overall stop time', count: 'Beams' },
    outputs: {
      intrusion: 'Reached in past the beams',
      distance: 'Least distance',
      heights: 'Heights over the floor',
    },
    options: { count: { '1': 'one', '2': 'two', '3': 'three', '4': 'four' } },
    notes: {
      ...notesOf('CAUTION_GUARDING', 'DISTANCE_2010', 'DISTANCE_STOP_MEASURED', 'DISTANCE_OTHER_WAYS'),
      BEAM_SINGLE:
        'One beam is stepped over and crept under; only where the risk assessment lets it. Its height is from memory.',
    },
  },
};

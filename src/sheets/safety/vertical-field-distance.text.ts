import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const verticalFieldDistanceText: SheetText = {
  en: {
    title: 'Distance of an upright field',
    about:
      'Least distance of a light curtain that is entered across, by its resolution and the overall stop time.',
    inputs: { time: 'Overall stop time', resolution: 'Resolution of the field' },
    outputs: { intrusion: 'Reached in unseen', distance: 'Least distance' },
    notes: {
      ...notesOf('CAUTION_GUARDING', 'DISTANCE_2010', 'DISTANCE_STOP_MEASURED', 'DISTANCE_OTHER_WAYS'),
      FIELD_SLOWER_STEP:
        'Over 500 mm at 2000 mm/s, so worked out again at 1600 mm/s, with 500 mm as the least.',
      FIELD_NOT_FOR_HANDS: 'Coarser than 40 mm a field finds arms and bodies, no hands.',
    },
  },
};

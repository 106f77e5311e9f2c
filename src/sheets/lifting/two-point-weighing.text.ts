import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const twoPointWeighingText: SheetText = {
  en: {
    title: 'Weighing at two points',
    about: 'Mass of a section and the place of its centre from what two supports weigh.',
    inputs: {
      first: 'Weighed at the first support',
      second: 'Weighed at the second support',
      distance: 'Distance of the supports',
    },
    outputs: {
      fromFirst: 'Centre of mass from the first support',
      mass: 'Mass',
      weight: 'Weight',
      offCentre: 'Off the middle, over the distance',
    },
    notes: {
      ...notesOf('CAUTION_LIFTING', 'LIFTING_DRAINED'),
      WEIGHING_OFF_CENTRE:
        'Over a tenth off the middle: equal legs hang it askew. Legs of different length, or other points.',
      WEIGHING_OTHER_WAYS: 'Weigh again across for the other way, and tilted for the height.',
    },
  },
};

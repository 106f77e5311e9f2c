import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const cornerWeighingText: SheetText = {
  en: {
    title: 'Weighing at four corners',
    about: 'Mass of a section and the place of its centre from what four supports weigh at one time.',
    inputs: {
      firstLeft: 'Weighed at the first end, left',
      firstRight: 'Weighed at the first end, right',
      secondLeft: 'Weighed at the second end, left',
      secondRight: 'Weighed at the second end, right',
      base: 'Distance of the supports along',
      track: 'Distance of the supports across',
    },
    outputs: {
      along: 'Centre of mass from the first end',
      across: 'Centre of mass from the left',
      mass: 'Mass',
      weight: 'Weight',
      diagonal: 'More on one diagonal, over the mass',
    },
    notes: {
      ...notesOf('CAUTION_LIFTING', 'LIFTING_DRAINED'),
      WEIGHING_ROCKS:
        'One diagonal carries over a tenth of the mass more than the other: it rocks. The centre holds all the same; level the scales before a corner is taken for what it carries.',
      WEIGHING_HEIGHT: 'Says nothing of the height of the centre: weigh again with one end raised.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const longestStopTimeText: SheetText = {
  en: {
    title: 'Longest stop time',
    about:
      'The longest overall stop time that a mounted distance allows, by the form the distance is worked out with.',
    inputs: {
      form: 'Form of the distance',
      mounted: 'Distance as mounted, less any that is added',
      intrusion: 'Reached in unseen',
    },
    outputs: { time: 'Longest overall stop time' },
    options: {
      form: {
        hand: 'upright field up to 40 mm',
        walking: 'coarser field, beams, level field, guard',
        'two-hand': 'two-hand control',
        us: 'US form',
      },
    },
    notes: {
      ...notesOf('CAUTION_GUARDING', 'DISTANCE_OTHER_WAYS'),
      LONGEST_LEAVES_NOTHING:
        'With this time the distance is used up: a stop time in use must lie below it by what wear and the other floor may add.',
    },
    problems: {
      MOUNTED_TOO_NEAR: '{path}: nearer than the form allows even for a stop at once. Allowed: {allowed}.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const strokeChangeText: SheetText = {
  en: {
    title: 'Stroke times on this floor',
    about:
      'Stroke times to be expected at the pressure of this floor: those measured where it was built, each in the proportion of the two computed ones; and what they add together.',
    inputs: {
      asBuilt: 'Stroke time as built, measured',
      there: 'Stroke time computed at the pressure where it was built',
      here: 'Stroke time computed at the pressure of this floor',
    },
    outputs: { times: 'Stroke times on this floor', added: 'Longer than as built, all together' },
    notes: {
      STROKE_IN_PROPORTION:
        'Cushion, throttles and the time of the valve are carried in proportion (common practice): measure the stroke once the machine runs, and set throttles and stop times again.',
      STROKE_FAR_FROM_BUILT:
        'Measured and computed time where it was built differ by more than a factor of two: load, throttle or conductance are not as described.',
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
  },
};

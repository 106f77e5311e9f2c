import type { SheetText } from '../sheet-text.ts';
import { asWritten } from './as-written.ts';
import { conductorPlaceInputs, conductorPlaceOptions } from './conductor-place.text.ts';
import { notesOf } from './notes.text.ts';
import { usSizes } from './us-conductors.ts';

export const ampacityUsText: SheetText = {
  en: {
    title: 'Ampacity of a copper conductor, US',
    about:
      'What a conductor may carry by US rules, corrected for ambient and grouping and limited by its terminals.',
    inputs: { size: 'Size', ...conductorPlaceInputs },
    outputs: {
      table: 'Table, insulation column',
      corrected: 'Corrected',
      terminals: 'Table, terminal column',
      allowed: 'Allowed',
    },
    options: { size: asWritten(usSizes), ...conductorPlaceOptions },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'NEC_310_16', 'TERMINALS_75', 'SMALL_CONDUCTOR'),
      EDITIONS_DIFFER: 'Editions differ here: the other one allows {other} A.',
    },
  },
};

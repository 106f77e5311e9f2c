import type { SheetText } from '../sheet-text.ts';
import { asWritten } from './as-written.ts';
import { notesOf } from './notes.text.ts';
import { gaugeSizes } from './wire-gauge.ts';

export const wireGaugeText: SheetText = {
  en: {
    title: 'Wire gauge in metric',
    about: 'Diameter and section of an American wire size, and the next metric section up.',
    inputs: { size: 'Size' },
    outputs: { diameter: 'Diameter of the solid wire', area: 'Section', metric: 'Next metric section up' },
    options: { size: asWritten(gaugeSizes) },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      METRIC_NOT_EQUIVALENT:
        'The nearest metric section is no equivalent: the larger one is taken, and the terminal must be made for it.',
    },
  },
};

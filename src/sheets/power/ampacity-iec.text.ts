import type { SheetText } from '../sheet-text.ts';
import { asWritten } from './as-written.ts';
import { cablePlaceInputs, cablePlaceOptions, coolerThanTable } from './cable-place.text.ts';
import { iecRatedSizes } from './iec-conductors.ts';
import { notesOf } from './notes.text.ts';

export const ampacityIecText: SheetText = {
  en: {
    title: 'Ampacity of a copper cable, IEC',
    about: 'What a copper PVC cable may carry by IEC rules, corrected for ambient and grouping.',
    inputs: { size: 'Section', ...cablePlaceInputs },
    outputs: { table: 'Table value', allowed: 'Allowed' },
    options: { size: asWritten(iecRatedSizes), ...cablePlaceOptions },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'IEC_60364_5_52', 'IEC_METHODS_DIFFER', 'IEC_ROW_FROM_MEMORY'),
      ...coolerThanTable,
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const footDiameterText: SheetText = {
  en: {
    title: 'Diameter of a round foot',
    about: 'Diameter of a round foot plate of an area.',
    inputs: { area: 'Area of the foot' },
    outputs: { diameter: 'Diameter of the foot' },
    notes: notesOf('CAUTION_STRUCTURE'),
  },
};

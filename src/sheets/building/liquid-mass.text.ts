import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const liquidMassText: SheetText = {
  en: {
    title: 'Liquid in a section',
    about: 'Mass of the liquid that fills the baths and vessels of a section.',
    inputs: { volumes: 'Volume of each bath or vessel', density: 'Density of the liquid' },
    outputs: { mass: 'Mass of the liquid' },
    notes: notesOf('CAUTION_MOVING'),
  },
};

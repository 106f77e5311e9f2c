import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const lineExtentText: SheetText = {
  en: {
    title: 'Place that a line takes',
    about: 'Length and width of the place that the sections take on the plan, with free way around each.',
    inputs: {
      x: 'Place of the corner, along',
      y: 'Place of the corner, across',
      lengths: 'Length',
      widths: 'Width',
      turned: 'Angle to which it is turned',
      clearances: 'Free way around it',
    },
    outputs: { length: 'Length of the place', width: 'Width of the place' },
    notes: {
      ...notesOf('CAUTION_STRUCTURE'),
      EXTENT_OPEN_DOORS:
        'Doors, guards and drawers that open outward take more than the closed machine: put them into the free way.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const tippingEdgeText: SheetText = {
  en: {
    title: 'Edge over which a section tips',
    about:
      'Level distance from the centre of gravity to the nearest line between the outer wheels of the gear, which stands centred under the section.',
    inputs: {
      length: 'Length of the section',
      width: 'Width of the section',
      base: 'Outer wheels apart, along',
      track: 'Outer wheels apart, across',
      along: 'Centre of gravity from the corner, along',
      across: 'Centre of gravity from the corner, across',
    },
    outputs: {
      alongEdge: 'To the nearer end',
      acrossEdge: 'To the nearer side',
      nearest: 'To the nearest of them',
    },
    notes: {
      ...notesOf('CAUTION_MOVING'),
      EDGE_OUTSIDE: 'The centre of gravity lies outside of the wheels: it tips as soon as it stands on them.',
    },
  },
};

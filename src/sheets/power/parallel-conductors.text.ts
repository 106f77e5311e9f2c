import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const parallelConductorsText: SheetText = {
  en: {
    title: 'Parallel conductors',
    about: 'Current that parallel conductors of one phase may carry together.',
    inputs: { each: 'Current of one conductor, as laid', parallel: 'Conductors for each phase' },
    outputs: { allowed: 'Current of all' },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      PARALLEL_EVEN:
        'They share the current only where length, size, material and terminals are the same; US rules allow it from 1/0 AWG on (NEC 310.10, from memory).',
    },
  },
};

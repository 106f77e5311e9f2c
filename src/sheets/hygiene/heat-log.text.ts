import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const heatLogText: SheetText = {
  en: {
    title: 'Logs by heat',
    about: 'Logs that a course of temperatures reaches against a germ of known D and z.',
    inputs: {
      times: 'Times',
      temperatures: 'Temperatures at the coldest place',
      d: 'D at the reference',
      reference: 'Reference temperature',
      z: 'z of the germ',
    },
    outputs: { reached: 'Logs reached', time: 'Equivalent time at the reference' },
    notes: notesOf('HYGIENE_AUTHORITY', 'LETHALITY_COLDEST', 'CAUTION_SCALD'),
    problems: problemsOf('TIMES_ASCEND'),
  },
};

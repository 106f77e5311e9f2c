import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const fZeroText: SheetText = {
  en: {
    title: 'F0 of a sterilisation',
    about: 'Minutes at 121.11 °C, with z of 10 K, that a course of temperatures is worth.',
    inputs: { times: 'Times', temperatures: 'Temperatures at the coldest place', reference: 'Reference, °C' },
    outputs: { minutes: 'F0, minutes at the reference', time: 'The same as a time' },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'LETHALITY_COLDEST', 'CAUTION_SCALD'),
      F_ZERO_REFERENCE: 'Some take 121.1 °C for 121.11 °C: the difference is 0.2 %.',
    },
    problems: problemsOf('TIMES_ASCEND'),
    options: { reference: { '121.11': '121.11 °C (250 °F)', '121.1': '121.1 °C' } },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const aZeroText: SheetText = {
  en: {
    title: 'A0 of a hot water disinfection',
    about: 'Seconds at 80 °C, with z of 10 K, that a course of temperatures above 65 °C is worth.',
    inputs: { times: 'Times', temperatures: 'Temperatures at the coldest place' },
    outputs: { seconds: 'A0, seconds at 80 °C', time: 'The same as a time' },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'LETHALITY_COLDEST', 'CAUTION_SCALD'),
      A_ZERO_NO_RULE:
        'A comparison aid. The two points of the bottled water rules, 170 °F for 15 min and 200 °F for 5 min, differ 15-fold in A0: it stands in for neither.',
    },
    problems: problemsOf('TIMES_ASCEND'),
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const pasteurisationUnitsText: SheetText = {
  en: {
    title: 'Pasteurisation units',
    about: 'Minutes at 60 °C that a course of temperatures is worth.',
    inputs: {
      times: 'Times',
      temperatures: 'Temperatures at the coldest place',
      law: 'Published form',
      counts: 'Least temperature that counts',
    },
    outputs: { units: 'Pasteurisation units (minutes at 60 °C)', z: 'z of this form' },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'LETHALITY_COLDEST', 'CAUTION_SCALD'),
      PU_TWO_FORMS:
        'Two forms are published: 1.393 a kelvin, which is z = 6.95 K, and z = 7 K. At 70 °C they differ by 2.6 %: say which one is meant.',
      PU_FROM_50: 'Time below about 50 °C is usually ignored: whether it counts there is doubted.',
    },
    problems: problemsOf('TIMES_ASCEND'),
    options: { law: { '1.393': '1.393 a kelvin', 'z = 7': 'z of 7 K' } },
  },
};

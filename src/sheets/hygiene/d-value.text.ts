import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const dValueText: SheetText = {
  en: {
    title: 'D at a temperature',
    about: 'Time for one decade of germs at another temperature, and the time that wanted logs ask there.',
    inputs: {
      d: 'D at the reference',
      reference: 'Reference temperature',
      z: 'z of the germ',
      temperature: 'Temperature',
      time: 'Time held',
      logs: 'Logs wanted',
    },
    outputs: {
      decimalTime: 'D at this temperature',
      neededTime: 'Time for the wanted logs',
      reached: 'Logs reached',
    },
    notes: notesOf('HYGIENE_AUTHORITY', 'LETHALITY_COLDEST', 'CAUTION_SCALD'),
  },
};

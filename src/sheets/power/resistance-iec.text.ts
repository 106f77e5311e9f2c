import type { SheetText } from '../sheet-text.ts';
import { asWritten } from './as-written.ts';
import { iecSizes } from './iec-conductors.ts';
import { notesOf } from './notes.text.ts';

export const resistanceIecText: SheetText = {
  en: {
    title: 'Resistance of a copper conductor, IEC',
    about: 'Greatest resistance of a metric copper conductor at its temperature.',
    inputs: { size: 'Section', conductorClass: 'Class', temperature: 'Temperature of the conductor' },
    outputs: { resistance: 'Resistance' },
    options: {
      size: asWritten(iecSizes),
      conductorClass: { 'class-1-or-2': 'class 1 or 2, solid or stranded', 'class-5': 'class 5, flexible' },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      IEC_60228: 'Rule set: IEC 60228, greatest resistance at 20 °C of plain copper, as transcribed.',
      IEC_REACTANCE: 'Reactance, where none is given: 0.08 Ω/km at 50 Hz, usually 0.07 to 0.1 Ω/km.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const insulationLimitText: SheetText = {
  en: {
    title: 'Insulation of a power circuit',
    about: 'Least resistance between the conductors of a power circuit and the protective conductor.',
    inputs: { part: 'What is measured', voltage: 'Voltage of the test, DC' },
    options: { part: { conductors: 'conductors', collectors: 'bus bars, collectors, slip rings' } },
    outputs: { least: 'At least', current: 'Current of the tester at the limit' },
    notes: {
      ...notesOf('CAUTION_GUARDING'),
      INSULATION_MEMORY:
        'The figure is recalled, not read: compare with the edition that binds here before anything is accepted by it.',
      INSULATION_DISCONNECT:
        'Drives, filters, arresters and meters that do not take the voltage are disconnected first; supply isolated and locked, discharged afterwards; by a qualified person.',
      INSULATION_VOLTAGE: 'The clause asks for 500 V DC.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const motorCurrentUsText: SheetText = {
  en: {
    title: 'Full-load current of a motor, US table',
    about:
      'Table current of an induction motor by its plate rating: what sizes its wires and its short-circuit device.',
    inputs: { power: 'Plate rating', voltage: 'Voltage of the motor or the system', phases: 'Phases' },
    outputs: { current: 'Table full-load current', column: 'Column of the table' },
    options: { phases: { 'three-phase': 'three-phase', 'single-phase': 'single-phase' } },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'NEC_430_248', 'TABLE_CURRENT_NOT_NAMEPLATE'),
      ORDINARY_MOTORS:
        'Ordinary induction motors: for low speed, high torque or several speeds the nameplate current counts.',
      FULL_LOAD_COPIES_DIFFER:
        'Copies of the table differ here: {taken} A is taken, another prints {other} A (older edition or misprint).',
    },
  },
};

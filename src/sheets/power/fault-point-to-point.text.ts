import type { SheetText } from '../sheet-text.ts';
import { asWritten } from './as-written.ts';
import { notesOf } from './notes.text.ts';
import { usSizes } from './us-conductors.ts';

export const faultMotorsAdd = {
  FAULT_MOTORS_ADD:
    'Running motors add about four times their full-load current; that is not in this figure.',
} as const;

export const faultPointToPointText: SheetText = {
  en: {
    title: 'Fault current at the end of a run, point to point',
    about: 'What is left of an available fault current at the end of a run, by the US point-to-point method.',
    inputs: {
      available: 'Available fault current where the run begins',
      voltage: 'Voltage, line to line',
      fault: 'Fault',
      length: 'Length, one way',
      size: 'Size',
      conduit: 'Conduit',
      parallel: 'Conductors in parallel',
    },
    outputs: { ratio: 'Ratio f', multiplier: 'Multiplier M', current: 'Fault current at the end' },
    options: {
      fault: { 'three-phase': 'three-phase', 'line-to-line': 'between two lines' },
      size: asWritten(usSizes),
      conduit: { steel: 'steel', 'not-magnetic': 'not magnetic' },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      POINT_TO_POINT_ARITHMETIC:
        'Rule set: US, point-to-point method with its table of C for copper at 600 V. It adds impedances as numbers; for long or small cables the vector method gives more current and is the one to compare with a rating.',
      ...faultMotorsAdd,
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

/** Words of the choice between the marked impedance and the least one. */
export const toleranceOptions = {
  'as-marked': 'as marked',
  'least-0.9': '0.9 of the marked one, for the greatest current',
} as const;

export const faultToleranceChosen = {
  FAULT_TOLERANCE_CHOSEN:
    'US practice takes 0.9 of the marked impedance for the greatest current; IEC 60909 raises the voltage by 1.05 or 1.10 instead (from memory). Which one was taken is the choice above.',
} as const;

export const transformerFaultText: SheetText = {
  en: {
    title: 'Fault current of a transformer',
    about: 'Rated current of a three-phase transformer and the fault current at its terminals.',
    inputs: {
      apparentPower: 'Rating',
      voltage: 'Secondary voltage, line to line',
      impedance: 'Marked impedance',
      tolerance: 'Impedance taken',
    },
    outputs: {
      ratedCurrent: 'Rated current',
      faultCurrent: 'Fault current, three-phase',
      lineToLine: 'Fault current between two phases',
    },
    options: { tolerance: toleranceOptions },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'TRANSFORMER_STIFF'),
      ...faultToleranceChosen,
      TRANSFORMER_IMPEDANCE_ODD:
        'Usual impedances are 2 to 6 %: read the nameplate again; a share and a percentage are easily confused.',
    },
  },
};

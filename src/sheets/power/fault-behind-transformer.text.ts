import type { SheetText } from '../sheet-text.ts';
import { faultMotorsAdd } from './fault-point-to-point.text.ts';
import { notesOf } from './notes.text.ts';
import { toleranceOptions } from './transformer-fault.text.ts';

export const faultBehindTransformerText: SheetText = {
  en: {
    title: 'Fault current behind a second transformer',
    about: 'Three-phase fault current behind a transformer, from what is available ahead of it.',
    inputs: {
      available: 'Fault current ahead of it',
      sourceRatio: 'X/R of all that lies ahead',
      primary: 'Voltage ahead of it, line to line',
      apparentPower: 'Rating of the transformer',
      impedance: 'Marked impedance',
      tolerance: 'Impedance taken',
      reactanceRatio: 'X/R of the transformer',
      secondary: 'Voltage behind it, line to line',
    },
    outputs: {
      current: 'Fault current behind it',
      arithmetic: 'The same with impedances added as numbers',
      most: 'The most there can be, with an unlimited supply ahead',
    },
    options: { tolerance: toleranceOptions },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'FAULT_ARITHMETIC_LOW'),
      ...faultMotorsAdd,
    },
  },
};

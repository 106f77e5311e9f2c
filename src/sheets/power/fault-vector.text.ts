import type { SheetText } from '../sheet-text.ts';
import { faultMotorsAdd } from './fault-point-to-point.text.ts';
import { notesOf } from './notes.text.ts';
import { toleranceOptions } from './transformer-fault.text.ts';

export const faultVectorText: SheetText = {
  en: {
    title: 'Fault current at the end of a run, as vectors',
    about:
      'Three-phase fault current behind a transformer and a run, with resistance and reactance kept apart.',
    inputs: {
      apparentPower: 'Rating of the transformer',
      voltage: 'Secondary voltage, line to line',
      impedance: 'Marked impedance',
      tolerance: 'Impedance taken',
      reactanceRatio: 'X/R of the transformer',
      length: 'Length of the run, one way',
      resistance: 'Resistance of a conductor, cold',
      reactance: 'Reactance of a conductor',
      parallel: 'Conductors in parallel',
    },
    outputs: {
      terminals: 'Fault current at the transformer',
      current: 'Fault current at the end',
      endRatio: 'X/R at the end',
      arithmetic: 'The same with impedances added as numbers',
    },
    options: { tolerance: toleranceOptions },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'TRANSFORMER_STIFF', 'COLD_CONDUCTOR', 'FAULT_ARITHMETIC_LOW'),
      ...faultMotorsAdd,
    },
  },
};

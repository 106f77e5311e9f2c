import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';
import { doNotRun } from './voltage-unbalance.text.ts';

export const unbalanceDeratingText: SheetText = {
  en: {
    title: 'Derating of a motor by unbalance',
    about: 'What a motor may still give on an unbalanced supply.',
    inputs: { unbalance: 'Voltage unbalance, NEMA', power: 'Plate rating' },
    outputs: { factor: 'Derating factor', power: 'Power it may give' },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'UNBALANCE_OVER_1'),
      DERATING_READ_FROM_CURVE:
        'Read from a curve of NEMA MG 1: others read up to 0.02 differently (0.88 or 0.90 at 3 %, 0.75 at 5 % from memory).',
    },
    problems: doNotRun,
  },
};

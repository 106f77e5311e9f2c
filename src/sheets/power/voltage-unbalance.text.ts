import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const doNotRun = {
  UNBALANCE_DO_NOT_RUN: 'Over 5 %: motors are not to be run on this supply (NEMA MG 1).',
} as const;

export const voltageUnbalanceText: SheetText = {
  en: {
    title: 'Voltage unbalance from three readings',
    about:
      'Unbalance of a three-phase supply by both definitions, and what it does to the currents of a motor.',
    inputs: { first: 'Line 1 to line 2', second: 'Line 2 to line 3', third: 'Line 3 to line 1' },
    outputs: {
      mean: 'Mean voltage',
      nema: 'Unbalance, NEMA',
      sequence: 'Unbalance, IEC (negative sequence)',
      lowestCurrent: 'Current unbalance, at least',
      highestCurrent: 'Current unbalance, up to',
      heating: 'Extra heating of the winding',
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'UNBALANCE_OVER_1'),
      UNBALANCE_WAYS_DIFFER:
        'NEMA takes the largest distance from the mean of the line-to-line readings, IEC the negative over the positive sequence; they differ. The largest minus the smallest reading is neither. Readings are taken under load by a qualified person.',
      UNBALANCE_OVER_IEC: 'Over 2 %: beyond what IEC 60204-1 and EN 50160 take as given.',
      ...doNotRun,
    },
    problems: {
      UNBALANCE_NO_TRIANGLE:
        '{path}: three line-to-line voltages close a triangle; "{given}" is more than the two others together. A reading is wrong, or one is to neutral.',
    },
  },
};

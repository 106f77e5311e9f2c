import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const largestStartText: SheetText = {
  en: {
    title: 'Current while the largest motor starts',
    about: 'Line current of a machine whose largest motor starts while everything else runs.',
    inputs: {
      running: 'Current of all others while they run',
      start: 'Starting current of the largest motor',
      runningFactor: 'Power factor of all others',
      startFactor: 'Power factor of the start',
    },
    outputs: {
      current: 'Line current while it starts, added as numbers',
      phasors: 'The same, each at its own power factor',
      powerFactor: 'Power factor of both together',
    },
    notes: notesOf('CAUTION_ELECTRICAL', 'SUM_CONSERVATIVE', 'START_ASK_UTILITY'),
  },
};

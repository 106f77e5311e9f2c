import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const loadCurrentText: SheetText = {
  en: {
    title: 'Current of a load',
    about: 'Line current and apparent power of a load from the power that it draws and its power factor.',
    inputs: {
      power: 'Power drawn',
      voltage: 'Voltage, line to line',
      phases: 'Phases',
      powerFactor: 'Power factor',
    },
    outputs: { current: 'Line current', apparentPower: 'Apparent power' },
    options: { phases: { 'three-phase': 'three-phase', 'single-phase': 'single-phase' } },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      LOAD_BALANCED:
        'For a load that draws alike from all its lines. A motor draws more than the power at its shaft: its efficiency comes first.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const motorInputText: SheetText = {
  en: {
    title: 'Input of a motor at its load',
    about: 'Current, real and apparent power that a motor draws for the power at its shaft.',
    inputs: {
      shaftPower: 'Power at the shaft',
      voltage: 'Voltage, line to line',
      efficiency: 'Efficiency at this load',
      powerFactor: 'Power factor at this load',
      phases: 'Phases',
    },
    outputs: { current: 'Line current', inputPower: 'Power drawn', apparentPower: 'Apparent power' },
    options: { phases: { 'three-phase': 'three-phase', 'single-phase': 'single-phase' } },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      MOTOR_INPUT_NOT_FOR_US_WIRES:
        'By IEC rules the nameplate current sizes the circuit; by US rules the table current does, not this one. At part load efficiency and power factor fall.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const driveFrequencyText: SheetText = {
  en: {
    title: 'Frequency of a drive for a speed',
    about: 'Frequency that a drive must give for a wanted speed, and the torque that is left there.',
    inputs: {
      frequency: 'Frequency now',
      speed: 'Speed now',
      wanted: 'Wanted speed',
      plateFrequency: 'Frequency on the plate',
    },
    outputs: {
      frequency: 'Frequency',
      torqueShare: 'Torque left, of rated',
      voltageShare: 'Voltage, of rated',
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      DRIVE_FIELD_WEAK:
        'Above the frequency of the plate the field weakens: constant torque is no longer there, and a pump asks the cube of the speed.',
      DRIVE_SLOW_COOLING:
        'Under half of the frequency on the plate the motor’s own fan hardly cools: full torque for long needs other cooling.',
    },
  },
};

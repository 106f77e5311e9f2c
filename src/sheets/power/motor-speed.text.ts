import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const motorSpeedText: SheetText = {
  en: {
    title: 'Speed of a motor and its gear',
    about: 'Speed of an induction motor at a frequency, and of what it drives through a gear.',
    inputs: {
      frequency: 'Frequency',
      poles: 'Poles',
      slip: 'Slip at this load',
      gearRatio: 'Gear ratio, motor over driven',
    },
    outputs: {
      synchronous: 'Synchronous speed',
      motor: 'Speed of the motor',
      driven: 'Speed of what it drives',
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      SPEED_PLATE_GIVES_SLIP:
        'Slip at full load follows from the speed on the plate. Agree on the direction of rotation before motors are coupled: a pump running backwards still pumps, and a screw capper or conveyor may break.',
    },
    problems: { POLES_ODD: '{path}: {given} poles cannot be; poles come in pairs: {allowed} and so on.' },
  },
};

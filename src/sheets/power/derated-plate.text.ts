import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const deratedPlateText: SheetText = {
  en: {
    title: 'What is left of the plate of a motor',
    about: 'Power that a motor may give where unbalance, heat, altitude or another frequency take from it.',
    inputs: {
      platePower: 'Plate rating of the motor',
      serviceFactor: 'Service factor',
      unbalance: 'Share left by unbalance',
      surroundings: 'Share left by heat and altitude',
      speedRatio: 'Frequency over that of the plate',
      flux: 'Volts per hertz over the plate',
      capacity: 'Share left by the maker’s table for the other frequency',
    },
    outputs: {
      frequency: 'Share left by the frequency',
      share: 'Share of the plate that it may give',
      power: 'Power that it may give',
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      DERATED_MAKER_DECIDES:
        'Factors multiplied, as if each left its share of what the others left; at another frequency the torque of the plate, or the maker’s share where that is less. The maker of the motor decides.',
      DERATED_NO_SERVICE_FACTOR:
        'The service factor does not count here: it holds under the usual conditions of the plate only.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const feederUsText: SheetText = {
  en: {
    title: 'Feeder of several motors, US',
    about: 'Ampacity that a feeder of several motors needs and the greatest rating of its device.',
    inputs: {
      motors: 'Table full-load currents',
      devices: 'Ratings of their branch devices',
      continuous: 'Other continuous load',
      other: 'Other load, not continuous',
    },
    outputs: {
      ampacity: 'Ampacity needed',
      deviceLimit: 'Limit of the device',
      deviceRating: 'Greatest standard rating',
    },
    notes: notesOf(
      'CAUTION_ELECTRICAL',
      'NEC_430',
      'ROUNDED_DOWN',
      'LARGEST_DEVICE',
      'FEEDER_OTHER_LOADS_DISPUTED',
    ),
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const sumpText: SheetText = {
  en: {
    title: 'Build-up in a sump',
    about:
      'What bottles carry into a recirculated sump: where its concentration ends and how fast it gets there.',
    inputs: {
      rate: 'Bottle rate',
      carry: 'Liquid carried by a bottle',
      carried: 'Concentration carried in',
      overflow: 'Fresh water in and over',
      volume: 'Volume of the sump',
      time: 'Time since fresh',
    },
    outputs: {
      steady: 'Concentration in the end',
      timeConstant: 'Time constant',
      sampleAfter: 'Sample not before',
      now: 'Concentration at that time',
    },
    notes: {
      ...notesOf('STEADY_AFTER_3', 'WEIGH_TWENTY', 'CAUTION_CHEMICAL'),
      SUMP_NO_OVERFLOW: 'Without overflow the sump ends at the concentration that is carried in.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const causticMakeUpText: SheetText = {
  en: {
    title: 'Caustic make-up',
    about: 'Sodium hydroxide that a bath loses with the bottles and has to get back.',
    inputs: {
      rate: 'Bottle rate',
      carry: 'Liquid carried out by a bottle',
      bath: 'Free sodium hydroxide of the bath',
      otherLoss: 'Lost to carbonate, labels and soil',
    },
    outputs: { makeUp: 'Sodium hydroxide to add' },
    notes: {
      ...notesOf('WEIGH_TWENTY', 'CAUTION_CHEMICAL'),
      MAKE_UP_CARRY_ONLY:
        'Only what bottles carry out is counted: carbonate and labels take more, by titration.',
    },
  },
};

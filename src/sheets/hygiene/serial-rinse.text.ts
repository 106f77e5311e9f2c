import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const serialRinseText: SheetText = {
  en: {
    title: 'Rinses of fresh water',
    about: 'What a bottle still carries after one or more rinses that each have fresh water.',
    inputs: {
      start: 'Concentration carried in',
      carry: 'Liquid carried out by a bottle',
      fresh: 'Fresh water for a bottle, each rinse',
      stages: 'Rinses in a row',
      mixing: 'Share of the water that mixes',
    },
    outputs: {
      left: 'Concentration carried out',
      ratio: 'Dilution',
      water: 'Water for a bottle, all rinses',
    },
    notes: notesOf('RINSE_NO_WATER', 'PERFECT_MIXING', 'WEIGH_TWENTY', 'CAUTION_CHEMICAL'),
    problems: problemsOf('HYGIENE_NOT_WHOLE'),
  },
};

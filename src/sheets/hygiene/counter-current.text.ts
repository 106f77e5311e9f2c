import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const counterCurrentText: SheetText = {
  en: {
    title: 'Counter-current rinse',
    about:
      'What a bottle still carries after rinses through which the same fresh water runs against the way of the bottles.',
    inputs: {
      start: 'Concentration carried in',
      carry: 'Liquid carried out by a bottle',
      fresh: 'Fresh water for a bottle, into the last rinse',
      stages: 'Rinses in a row',
      mixing: 'Share of the water that mixes',
    },
    outputs: {
      left: 'Concentration carried out',
      ratio: 'Dilution',
      rinseRatio: 'Mixing water over carried liquid',
    },
    notes: {
      ...notesOf('RINSE_NO_WATER', 'PERFECT_MIXING', 'WEIGH_TWENTY', 'CAUTION_CHEMICAL'),
      RINSE_NEVER_UPSTREAM:
        'Used rinse water goes towards the dirty end only, never into a sanitiser or a later stage (common practice).',
    },
    problems: problemsOf('HYGIENE_NOT_WHOLE'),
  },
};

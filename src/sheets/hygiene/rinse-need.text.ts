import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const rinseNeedText: SheetText = {
  en: {
    title: 'Rinse water for a dilution',
    about:
      'Water for a bottle that brings what it carries down to a wanted dilution, counter-current and fresh each time.',
    inputs: {
      ratio: 'Dilution wanted',
      carry: 'Liquid carried out by a bottle',
      stages: 'Rinses in a row',
      mixing: 'Share of the water that mixes',
    },
    outputs: {
      counterRatio: 'Mixing water over carried liquid, counter-current',
      counterWater: 'Water for a bottle, counter-current',
      serialWater: 'Water for a bottle, fresh in every rinse',
      shortcut: 'Shortcut for the ratio',
      longerShortcut: 'Shortcut with 1/n',
    },
    notes: {
      ...notesOf('PERFECT_MIXING', 'WEIGH_TWENTY', 'CAUTION_CHEMICAL'),
      RINSE_SHORTCUTS:
        'The shortcuts of the trade ask a little more than the balances: at 1000 to 1 the one 1.6 to 3.7 %, the other 3.3 to 7.2 % with two or three stages.',
    },
    problems: problemsOf('HYGIENE_NOT_WHOLE'),
  },
};

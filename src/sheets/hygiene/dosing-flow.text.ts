import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const dosingFlowText: SheetText = {
  en: {
    title: 'Continuous dosing',
    about: 'Flow of a concentrate that brings running water to a strength.',
    inputs: {
      flow: 'Flow of the water',
      strong: 'Strength of the concentrate',
      wanted: 'Strength wanted',
      arriving: 'Already in the water',
      demand: 'Used up by what is in the water',
    },
    outputs: { dose: 'Flow of the concentrate' },
    notes: {
      ...notesOf('CAUTION_CHEMICAL'),
      DOSING_NONE: 'The water already has it: nothing is dosed.',
      DOSING_NO_DEMAND:
        'No demand is counted: soil, caustic and iron use some up. Measure it at the last bottle of the row, not at the pump.',
    },
    problems: {
      DOSING_WEAK: '{path}: the concentrate must be stronger than what is wanted and what is used up.',
    },
  },
};

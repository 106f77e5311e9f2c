import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const solutionConcentrationText: SheetText = {
  en: {
    title: 'Concentration of a thin solution',
    about:
      'Concentration of a thin solution told by its share of mass, thinned further where water is added.',
    inputs: { share: 'Share by mass', water: 'Volumes of water added to one of the solution' },
    outputs: { concentration: 'Concentration' },
    notes: {
      ...notesOf('CAUTION_CHEMICAL'),
      SOLUTION_THICK: 'Over 3 %: a solution is heavier than water, and has more in a litre than this.',
    },
  },
};

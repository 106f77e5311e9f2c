import type { SheetText } from '../sheet-text.ts';
import { handbook133ScaleText } from './handbook-133-scale.text.ts';
import { lotNotes } from './lot-notes.text.ts';

export const averageScaleText: SheetText = {
  en: {
    title: 'Measuring for an average system',
    about:
      'Whether contents are measured well enough for the average system of the EU or the UK: the error may be a fifth of the tolerable deficiency.',
    inputs: {
      deficiency: 'Tolerable deficiency',
      expanded: 'Expanded uncertainty of the measured contents',
    },
    outputs: { fitness: 'The measurement', largestError: 'Largest error' },
    options: { fitness: handbook133ScaleText.en.options!.fitness! },
    notes: { RULE_AUTHORITY: lotNotes.RULE_AUTHORITY },
  },
};

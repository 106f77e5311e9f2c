import type { SheetText } from '../sheet-text.ts';
import { averageLotWords } from './average-lot.text.ts';

export const euLotText: SheetText = {
  en: {
    title: 'Lot under the EU average system',
    about: 'Whether a batch is accepted under Directive 76/211/EEC: by its single packages and by its mean.',
    inputs: averageLotWords.inputs,
    outputs: averageLotWords.outputs,
    options: {
      ...averageLotWords.verdicts,
      plan: { double: 'double, packages stay closed', destructive: 'packages are opened' },
    },
    notes: {
      ...averageLotWords.notes,
      EU_SMALL_LOT:
        'A batch under 100 is checked whole. How many defective ones it may hold is not in the text that we hold.',
    },
    problems: averageLotWords.problems,
  },
};

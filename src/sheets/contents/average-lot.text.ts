import { lotNotes, lotProblems } from './lot-notes.text.ts';
import { lotVerdictWords } from './lot-words.text.ts';

/** Words that the sheets of the average systems share, in English. */
export const averageLotWords = {
  inputs: {
    quantity: 'Label',
    lotSize: 'Packages in the lot',
    plan: 'Plan',
    volumes: 'Contents at 20 °C, in the order drawn',
  },
  outputs: {
    verdict: 'The lot',
    itemVerdict: 'By its single packages',
    meanVerdict: 'By its mean',
    counted: 'Packages counted',
    more: 'Packages still to draw',
    deficiency: 'Tolerable deficiency',
    defective: 'Defective packages',
    barred: 'Of these short of more than twice the deficiency',
    meanSample: 'Packages that the mean is taken of',
    mean: 'Mean of these',
    spread: 'Standard deviation of these',
    leastMean: 'Least mean that passes',
  },
  verdicts: { verdict: lotVerdictWords, itemVerdict: lotVerdictWords, meanVerdict: lotVerdictWords },
  notes: {
    RULE_AUTHORITY: lotNotes.RULE_AUTHORITY,
    LOT_SURPLUS: lotNotes.LOT_SURPLUS,
    LOT_BARRED: lotNotes.LOT_BARRED,
    DESTRUCTIVE_SMALL_LOT:
      'A plan that opens packages is not meant for lots under 100: the lot was judged as one that is checked whole.',
  },
  problems: {
    LOT_NOT_WHOLE: lotProblems.LOT_NOT_WHOLE,
    LOT_MORE_THAN_LOT: lotProblems.LOT_MORE_THAN_LOT,
  },
} as const;

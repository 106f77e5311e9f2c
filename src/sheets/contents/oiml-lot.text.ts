import type { SheetText } from '../sheet-text.ts';
import { lotNotes, lotProblems } from './lot-notes.text.ts';
import { lotVerdictWords } from './lot-words.text.ts';

export const oimlLotText: SheetText = {
  en: {
    title: 'Lot under OIML R 87',
    about:
      'Whether a lot of packages is accepted under OIML R 87: by its mean, by those short, by those far short.',
    inputs: {
      quantity: 'Label',
      lotSize: 'Packages in the lot',
      volumes: 'Contents at the reference temperature, in the order drawn',
      table: 'Sampling table, as transposed in',
      typedSample: 'Packages that the typed plan takes',
      typedFactor: 'Factor of the typed plan',
      typedAllowed: 'Packages that the typed plan lets be short',
    },
    outputs: {
      verdict: 'The lot',
      sample: 'Packages that the plan takes',
      more: 'Packages still to draw',
      meanError: 'Mean error',
      spread: 'Standard deviation',
      factor: 'Sample correction factor',
      correctedError: 'Mean error with its correction (must not be below 0)',
      deficiency: 'Tolerable deficiency',
      below: 'Packages short of more than the deficiency',
      allowed: 'Of these allowed',
      belowTwice: 'Packages short of more than twice the deficiency (none allowed)',
    },
    options: {
      verdict: lotVerdictWords,
      table: { Australia: 'Australia', 'New Zealand': 'New Zealand', 'typed in': 'a plan that is typed in' },
    },
    notes: {
      RULE_AUTHORITY: lotNotes.RULE_AUTHORITY,
      LOT_SURPLUS: lotNotes.LOT_SURPLUS,
      LOT_BARRED: lotNotes.LOT_BARRED,
      OIML_PLAN_TYPED: 'The plan was typed in: we hold no table of it. Name the edition beside the result.',
      OIML_FINITE_LOT:
        'The table of New Zealand counts in that the lot is finite, and is the law there alone: see whether it holds where the lot is sold.',
      OIML_MEAN_ON_LIMIT:
        'The corrected mean stands exactly on the limit. One transposition passes it, another asks for more than the limit.',
    },
    problems: {
      LOT_NOT_WHOLE: lotProblems.LOT_NOT_WHOLE,
      LOT_MORE_THAN_LOT: lotProblems.LOT_MORE_THAN_LOT,
      OIML_LOT_SMALL:
        '{path}: the table begins with lots of {allowed}; this one has {given}. Take the table of New Zealand where it is the law, or type in the plan of your edition.',
      OIML_PLAN_MISSING:
        '{path}: how many packages does the plan take? {given} cannot be. Allowed: {allowed}.',
    },
  },
};

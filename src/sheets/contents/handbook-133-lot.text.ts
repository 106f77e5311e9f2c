import type { SheetText } from '../sheet-text.ts';
import { lotNotes, lotProblems } from './lot-notes.text.ts';
import { lotVerdictWords } from './lot-words.text.ts';
import { packageVolumesText } from './package-volumes.text.ts';

export const handbook133LotText: SheetText = {
  en: {
    title: 'Lot under NIST Handbook 133',
    about:
      'Whether a lot labelled by volume passes category A of NIST Handbook 133, weighed with one average tare: by unreasonable minus errors and by its mean.',
    inputs: {
      quantity: 'Label',
      lotSize: 'Packages in the lot',
      gross: 'Gross, each package, in the order drawn',
      tares: 'Tares of the opened packages',
      density: 'Density by weight in air at the reference temperature',
      variation: 'Maximum allowable variation, from the table of your edition',
    },
    outputs: {
      verdict: 'The lot',
      sample: 'Packages that the plan takes',
      more: 'Packages still to draw',
      meanTare: 'Average tare',
      nominalGross: 'Nominal gross weight',
      meanError: 'Average error',
      spread: 'Standard deviation',
      factor: 'Sample correction factor',
      errorLimit: 'Sample error limit',
      worst: 'Smallest error',
      unreasonable: 'Unreasonable minus errors',
      allowed: 'Of these allowed',
    },
    options: { verdict: lotVerdictWords },
    notes: {
      RULE_AUTHORITY: lotNotes.RULE_AUTHORITY,
      LOT_SURPLUS: lotNotes.LOT_SURPLUS,
      HANDBOOK_PLAN_MEMORY:
        'Sample sizes and allowed minus errors are recalled, not read: confirm them in table 2-1 of your edition. The factors were computed.',
      HANDBOOK_VARIATION_TYPED:
        'The maximum allowable variation was typed in: we hold no table of it. Name the edition beside the result.',
      HANDBOOK_TARES:
        'How many packages must be opened for the tare is worked out on a sheet of its own, with the number that table 2-3 of your edition gives.',
      HANDBOOK_MEAN_ON_LIMIT:
        'The average error equals the sample error limit. The handbook leaves this open; it was taken as a pass.',
    },
    problems: {
      LOT_NOT_WHOLE: lotProblems.LOT_NOT_WHOLE,
      LOT_MORE_THAN_LOT: lotProblems.LOT_MORE_THAN_LOT,
      PACKAGE_TARE_OVER_GROSS: packageVolumesText.en.problems!.PACKAGE_TARE_OVER_GROSS!,
    },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const twoVesselsText: SheetText = {
  en: {
    title: 'Two vessels finding one level',
    about:
      'Time in which two vessels joined under the liquid come nearer to one level, as in a fill from below.',
    inputs: {
      upperArea: 'Plan area of the higher',
      lowerArea: 'Plan area of the lower',
      bore: 'Bore of the passage',
      dischargeCoefficient: 'Coefficient of discharge',
      startDifference: 'Difference of levels at first',
      endDifference: 'Difference of levels in the end',
    },
    outputs: { time: 'Time' },
    notes: {},
    problems: { VESSELS_DIFFERENCE: 'The difference of the levels can only become less.' },
  },
};

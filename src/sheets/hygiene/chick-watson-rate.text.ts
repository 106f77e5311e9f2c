import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const chickWatsonRateText: SheetText = {
  en: {
    title: 'Rate of inactivation from counts',
    about:
      'Rate of Chick and Watson from counts of germs at several times, by a straight line of least squares.',
    inputs: { times: 'Times', counts: 'Germs counted', residual: 'Disinfectant, constant' },
    outputs: {
      rate: 'Rate of inactivation',
      intercept: 'Intercept of the line',
      explained: 'R²',
      survivors: 'Natural logarithm of the survivors',
    },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'CT_NOT_FOR_RINSE', 'CAUTION_CHEMICAL'),
      CHICK_RATE_NOT_FALLING: 'The counts do not fall: no inactivation is seen.',
      CHICK_NOT_STRAIGHT:
        'The points lie on no straight line (R² under 0.9): a shoulder or a tail is no single rate.',
    },
    problems: problemsOf('TIMES_ASCEND'),
  },
};

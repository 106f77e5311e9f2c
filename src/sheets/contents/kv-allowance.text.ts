import type { SheetText } from '../sheet-text.ts';

export const kvAllowanceText: SheetText = {
  en: {
    title: 'What the product changes of a lane’s Kv between two floors',
    about:
      'Expected change of the Kv of a lane, and its standard deviation, where the product is thicker or thinner.',
    inputs: { viscosityRatio: 'Kinematic viscosity there over here' },
    outputs: { shift: 'Expected change of Kv', deviation: 'Standard deviation of that change' },
    notes: {
      KV_HABIT:
        'Five per cent a decade is common practice: a timed fill with the product says it of these lanes.',
      KV_THICK: 'More than tenfold: time a fill with the product.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const giveawayText: SheetText = {
  en: {
    title: 'Giveaway',
    about: 'Product that a mean above the label gives away in a day and in a year.',
    inputs: {
      mean: 'Mean contents at the reference temperature',
      label: 'Quantity on the label',
      rate: 'Bottles filled',
      dailyTime: 'Time of filling in a day',
      days: 'Days of filling in a year',
    },
    outputs: {
      perBottle: 'Given away a bottle',
      share: 'Share of the label',
      perDay: 'Given away a day',
      perYear: 'Given away a year',
    },
    notes: { GIVEAWAY_SHORT: 'The mean is below the label: nothing is given away, the bottles are short.' },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const washerWaterText: SheetText = {
  en: {
    title: 'Fresh water of a washer',
    about:
      'Fresh water that rinse, make-up and dumped baths take together, and what of it goes to the drain.',
    inputs: {
      rate: 'Bottles',
      rinse: 'Fresh rinse water of a bottle',
      makeUp: 'Fresh water into the baths',
      dumped: 'Volume let go at each dump',
      betweenDumps: 'Time from dump to dump',
      carriedOut: 'Water that a bottle carries out',
      evaporated: 'Water that evaporates',
    },
    outputs: {
      fresh: 'Fresh water',
      perBottle: 'Fresh water of a bottle, all in',
      toDrain: 'To the drain, mean',
    },
    notes: {
      WASHER_WATER_MEAN:
        'A mean. Filling the baths at the start and an emergency shower come on top: the supply must carry them at the same time.',
      WASHER_WATER_BALANCE: 'More leaves with bottles and air than comes in: one of the figures is wrong.',
      WASHER_WATER_MUCH:
        'Over 6 L a bottle: more than jug washers usually take (2 to 6 L, common practice). Measure at the customer’s speed.',
    },
  },
};

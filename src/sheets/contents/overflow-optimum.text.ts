import type { SheetText } from '../sheet-text.ts';

export const overflowOptimumText: SheetText = {
  en: {
    title: 'Cheapest overflow',
    about: 'Mean over the level that costs least where a bottle that misses the level is lost as a whole.',
    inputs: {
      spread: 'Standard deviation of delivered less held',
      bottleWorth: 'Product that costs as much as one missed bottle',
    },
    outputs: {
      deviations: 'Standard deviations over the level',
      over: 'Mean over the level',
      chance: 'Chance that a bottle reaches the level',
      overflow: 'Mean overflow a bottle',
      cost: 'Overflow and missed bottles, in product a bottle',
    },
    notes: {
      OPTIMUM_BELOW_HALF:
        'At this worth it would pay to let more than half of the bottles miss the level: the worth of a missed bottle is likely too low.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const shortfallOptimumText: SheetText = {
  en: {
    title: 'Cheapest mean where volume counts both ways',
    about: 'Mean over the level that costs least where a volume short costs so many times a volume over.',
    inputs: {
      spread: 'Standard deviation of delivered less held',
      costRatio: 'Cost of a volume short over cost of a volume over',
    },
    outputs: {
      deviations: 'Standard deviations over the level',
      over: 'Mean over the level',
      overflow: 'Mean overflow a bottle',
      shortfall: 'Mean shortfall a bottle',
    },
    notes: {
      OPTIMUM_BOTTLE_LOST:
        'Where a short bottle is rejected as a whole, the cheapest overflow is the one to ask.',
    },
  },
};

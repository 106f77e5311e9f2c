import type { SheetText } from '../sheet-text.ts';

export const loopPeriodText: SheetText = {
  en: {
    title: 'Period of a loop of waits',
    about:
      'Stations that wait for each other in a ring: the steps round it, over the blocks after which it comes back to its beginning, give the time a fill that this ring allows.',
    inputs: {
      steps: 'Steps round the loop',
      blocks: 'Blocks that the loop spans',
      fills: 'Fills in a block',
    },
    outputs: { period: 'Time a fill' },
    notes: {
      RATE_ONE_LOOP_OF_ALL:
        'The period of one loop. The line runs at that of its longest loop, and shortening this one helps until the next longest is reached.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const laneFillText: SheetText = {
  en: {
    title: 'Fill of one lane at one flow',
    about: 'Time to the count, time until the valve is shut, and what still runs after the count.',
    inputs: {
      volume: 'Volume to the count',
      flow: 'Flow',
      delay: 'Delay before the valve moves',
      closing: 'Closing time',
      closingFactor: 'Mean share of the flow while closing',
      drip: 'Drip',
    },
    outputs: {
      countTime: 'Time to the count',
      fillTime: 'Time until shut',
      afterRun: 'After-run',
      filled: 'Volume filled',
    },
    notes: {
      FILL_AFTER_RUN_LARGE:
        'More than a tenth of the dose runs after the count: it will scatter with the flow.',
    },
  },
};

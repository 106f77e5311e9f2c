import type { SheetText } from '../sheet-text.ts';

export const fillByStepsText: SheetText = {
  en: {
    title: 'Fill of one lane, event by event',
    about:
      'What a lane passes between the moments at which the flows change (another lane shuts, the speed changes over, a nozzle is covered), and what still runs after the count.',
    inputs: {
      durations: 'Time from event to event',
      flows: 'Mean flow of the lane meanwhile',
      flowAtCount: 'Flow at the count',
      delay: 'Delay before the valve moves',
      closing: 'Closing time',
      drip: 'Drip',
    },
    outputs: {
      counted: 'Volume to the count',
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

import type { SheetText } from '../sheet-text.ts';

export const flowLeftText: SheetText = {
  en: {
    title: 'Flow that is left',
    about: 'Flow that is left of a stream of which some runs on elsewhere.',
    inputs: { comesIn: 'Flow that comes in', runsOn: 'Flows that run on' },
    outputs: { left: 'Flow that is left' },
    notes: {
      FLOW_MORE_RUNS_ON:
        'More runs on than comes in: one of the flows is wrong, or the bath is filled from elsewhere.',
    },
  },
};

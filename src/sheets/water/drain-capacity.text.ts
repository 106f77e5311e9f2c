import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const drainCapacityText: SheetText = {
  en: {
    title: 'Capacity of a drain',
    about: 'What a round drain carries by its own fall at a filling.',
    inputs: {
      bore: 'Bore',
      slope: 'Fall over length',
      manning: 'Manning coefficient',
      filling: 'Depth over bore',
    },
    outputs: {
      flow: 'Flow',
      velocity: 'Velocity',
      area: 'Wetted area',
      hydraulicRadius: 'Hydraulic radius',
      fullFlow: 'Flow when full',
    },
    notes: { DRAIN_SLOW: notes.DRAIN_SLOW, DRAIN_FULL: notes.DRAIN_FULL },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const drainDepthText: SheetText = {
  en: {
    title: 'Depth in a drain',
    about:
      'Depth at which a round drain carries a flow by its own fall: the lower of two where there are two.',
    inputs: { flow: 'Flow', bore: 'Bore', slope: 'Fall over length', manning: 'Manning coefficient' },
    outputs: {
      filling: 'Depth over bore',
      depth: 'Depth',
      velocity: 'Velocity',
      residual: 'Flow left over by the iteration',
    },
    notes: { DRAIN_SLOW: notes.DRAIN_SLOW, DRAIN_FULL: notes.DRAIN_FULL },
    problems: { DRAIN_SURCHARGED: 'More than the drain carries by its fall: it backs up.' },
  },
};

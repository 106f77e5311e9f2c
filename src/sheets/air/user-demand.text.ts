import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const userDemandText: SheetText = {
  en: {
    title: 'Average and peak demand of a list of users',
    about:
      'Average for compressor and dryer, peak for valves, tubes, filter, regulator and the hose to the machine. The receiver stands between the two.',
    inputs: {
      volumes: 'Free air of one draw',
      rates: 'Draws in a time',
      durations: 'Duration of one draw',
      together: 'How many draw at the same moment',
      leak: 'Leakage',
    },
    outputs: { averageFlow: 'Average demand', peakFlow: 'Peak demand' },
    notes: {
      DEMAND_PEAK_UNDER_AVERAGE:
        'The peak is under the average: more of the users must draw at the same moment than is said.',
      DEMAND_NO_LEAK:
        'No leakage is counted; well-kept systems lose under 10 % of the capacity, neglected ones 20 to 30 %.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
  },
};

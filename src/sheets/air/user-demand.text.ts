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
      DEMAND_PEAK_UNDER_AVERAGE: notes.DEMAND_PEAK_UNDER_AVERAGE,
      DEMAND_NO_LEAK: notes.DEMAND_NO_LEAK,
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const machineDemandText: SheetText = {
  en: {
    title: 'Average and peak demand of a machine',
    about:
      'Free air of all cylinders and jets of a machine: the average over its index for compressor and dryer, the peak for hose, filter, regulator and valves.',
    inputs: {
      perIndex: 'Free air of each cylinder in one index',
      strokes: 'Larger single draw of each cylinder',
      durations: 'Duration of that stroke',
      blowFlows: 'Flow of each jet while it blows',
      blowTimes: 'Time that it blows in one index',
      period: 'Index period',
      leak: 'Leakage as a share of the demand',
    },
    outputs: { averageFlow: 'Average demand', peakFlow: 'Peak demand', leakFlow: 'Leakage' },
    notes: {
      DEMAND_PEAK_UNDER_AVERAGE: notes.DEMAND_PEAK_UNDER_AVERAGE,
      BLOW_OVER_INDEX: 'A jet is said to blow for longer than the whole index.',
      DEMAND_NO_LEAK: notes.DEMAND_NO_LEAK,
      DEMAND_LEAK_SHARE:
        'Leakage is counted as a share of the demand. Where nothing is known a tenth is a habit: well-kept systems lose under 10 %, neglected ones 20 to 30 %. Measure the machine alone.',
      DEMAND_ALL_TOGETHER:
        'The peak counts every cylinder and every jet at the same moment: the highest it can be.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
  },
};

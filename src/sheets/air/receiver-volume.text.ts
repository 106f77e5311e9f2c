import type { SheetText } from '../sheet-text.ts';
import { problems } from './notes.text.ts';
import { receiverNotes, receiverProblems } from './receiver.text.ts';

export const receiverVolumeText: SheetText = {
  en: {
    title: 'Receiver for a demand that changes',
    about: 'Volume that carries a profile of demand, in equal intervals, while it outruns the compressor.',
    inputs: {
      demands: 'Demand in each interval',
      interval: 'Interval',
      supply: 'Delivery of the compressor',
      pattern: 'The profile',
      high: 'Pressure before',
      low: 'Lowest pressure allowed',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature of the air in the receiver',
    },
    outputs: {
      volume: 'Receiver',
      deficit: 'Air that it gives at most',
      meanDemand: 'Mean demand',
      peakDemand: 'Highest demand',
    },
    notes: receiverNotes,
    problems: {
      AIR_BELOW_VACUUM: problems.AIR_BELOW_VACUUM,
      RECEIVER_BAND: receiverProblems.RECEIVER_BAND,
      RECEIVER_MEAN_OVER: receiverProblems.RECEIVER_MEAN_OVER,
    },
    options: { pattern: { repeats: 'repeats', once: 'happens once' } },
  },
};

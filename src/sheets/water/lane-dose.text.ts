import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const laneDoseText: SheetText = {
  en: {
    title: 'Dose of a lane by counts',
    about:
      'Mean volume in the bottle of a lane that shuts at its count, and the spread that meter and controller give it.',
    inputs: {
      pulses: 'Count',
      pulseDensity: 'Pulses per volume',
      flow: 'Flow at closing',
      delay: 'Delay before the valve moves',
      closing: 'Closing time',
      closingFactor: 'Mean share of the flow while closing',
      drip: 'Drip',
      scan: 'Scan time of the controller',
      phase: 'Start of the count',
    },
    outputs: {
      counted: 'Volume counted',
      afterRun: 'After-run',
      bias: 'Mean of the start phase',
      volume: 'Volume',
      spread: 'Standard deviation',
    },
    options: { phase: { 'free-running': 'Free-running meter', reset: 'Reset at each fill' } },
    notes: { DOSE_FEW_COUNTS: notes.DOSE_FEW_COUNTS },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const countPresetText: SheetText = {
  en: {
    title: 'Preset of a lane',
    about: 'Count at which a lane must shut so that its mean volume comes nearest to the target.',
    inputs: {
      target: 'Target volume',
      afterRun: 'After-run',
      pulseDensity: 'Pulses per volume',
      phase: 'Start of the count',
    },
    outputs: { pulses: 'Preset', volume: 'Volume with this preset', rounding: 'Left over by rounding' },
    options: { phase: { 'free-running': 'Free-running meter', reset: 'Reset at each fill' } },
    notes: {
      DOSE_FEW_COUNTS: notes.DOSE_FEW_COUNTS,
      PRESET_AFTER_RUN: 'The after-run alone reaches the target: a preset of nothing still overfills.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const pulsesOfVolumeText: SheetText = {
  en: {
    title: 'A counter against a known volume',
    about:
      'Bounds of the pulses that a meter counts, by the volume that was weighed or measured: its largest error, and one pulse more or less.',
    inputs: {
      pulses: 'Pulses of the meter for a volume, as the book has them',
      volume: 'Least volume that is let through',
      meterClass: 'Largest error of the meter over its range',
    },
    outputs: { lowest: 'Least pulses by the volume', highest: 'Most pulses by the volume' },
    notes: {
      PULSES_FEW:
        'Fewer than a hundred pulses: one of them hides more than most meters err. Let more through.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { presetProblemWords } from './preset-words.text.ts';

export const volumePresetText: SheetText = {
  en: {
    title: 'Preset for a volume',
    about:
      'Smallest whole count whose mean keeps the three limits of an average system: of the mean, of the share below Q - T, of Q - 2T.',
    inputs: {
      label: 'Quantity on the label (Q)',
      deficiency: 'Tolerable deficiency (T)',
      margin: 'Margin of the mean for the test',
      spread: 'Standard deviation of the contents',
      shareBelow: 'Share allowed below Q - T',
      noneBelow: 'Share that counts as none below Q - 2T',
      afterRun: 'After-run of the lane',
      perCount: 'Volume of one count',
    },
    outputs: {
      meanNeeded: 'Mean needed',
      byMean: 'Mean needed by the rule of the mean',
      byShare: 'Mean needed by the share below Q - T',
      byNone: 'Mean needed by none below Q - 2T',
      rule: 'Rule that governs',
      preset: 'Preset',
      volume: 'Mean at the preset',
    },
    options: { rule: { mean: 'the mean', share: 'share below Q - T', none: 'none below Q - 2T' } },
    notes: {
      VOLUME_NO_MARGIN:
        'No margin for the test of the mean: a lot that is right on the label fails now and then.',
      VOLUME_NONE_CHOSEN:
        'How rare "none below Q - 2T" must be is a choice of practice; the rules themselves allow none in a sample.',
    },
    problems: presetProblemWords,
  },
};

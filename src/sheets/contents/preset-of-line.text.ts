import type { SheetText } from '../sheet-text.ts';
import { lineNotes, lineProblems } from './lane-line-words.text.ts';

export const presetOfLineText: SheetText = {
  en: {
    title: "Preset of a volume by a lane's line",
    about:
      'Preset at which a lane gives a volume, with its uncertainty and the limits between which it lies.',
    inputs: {
      counts: 'Preset of each fill',
      volumes: 'Volume of each fill',
      target: 'Volume aimed at',
      repeats: 'Future fills whose mean is to hit it',
      confidence: 'Confidence of the limits (two-sided)',
    },
    outputs: {
      preset: 'Preset',
      uncertainty: 'Standard uncertainty of the preset',
      slopeDoubt: 'Doubt of the slope (g of Fieller)',
      lowest: 'Lower limit of the preset',
      highest: 'Upper limit of the preset',
    },
    notes: {
      ...lineNotes,
      LINE_SLOPE_DOUBT: 'The slope is in doubt: trust the limits, not the standard uncertainty.',
    },
    problems: {
      ...lineProblems,
      LINE_SLOPE_UNSURE:
        '{path}: the slope cannot be told from none at this confidence, so that no limits of a preset exist. Fill at presets further apart.',
    },
  },
};

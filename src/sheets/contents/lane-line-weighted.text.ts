import type { SheetText } from '../sheet-text.ts';
import { lineNotes, lineProblems } from './lane-line-words.text.ts';

export const laneLineWeightedText: SheetText = {
  en: {
    title: "A lane's line, fills of unequal spread",
    about:
      "A lane's line where the spread of repeated fills grows with the preset: each fill counts by its own spread.",
    inputs: {
      counts: 'Preset of each fill',
      volumes: 'Volume of each fill',
      spreads: 'Standard deviation of a fill at that preset',
      preset: 'Preset that is asked about',
      presetSpread: 'Standard deviation of a fill there',
      confidence: 'Confidence of the bands (two-sided)',
    },
    outputs: {
      afterRun: 'After-run: what passes beyond the count',
      perCount: 'Volume of one count',
      afterRunUncertainty: 'Standard uncertainty of the after-run',
      perCountUncertainty: 'Standard uncertainty of the volume of one count',
      correlation: 'Correlation of the two',
      spreadRatio: 'Scatter found over scatter stated',
      volume: 'Volume at the preset',
      meanBand: 'Half-width of the band of the mean',
      singleBand: 'Half-width of the band of a single fill',
    },
    notes: {
      ...lineNotes,
      LINE_WEIGHTS_IDLE: 'The spreads differ by two to one at most: a line without weights would do.',
    },
    problems: lineProblems,
  },
};

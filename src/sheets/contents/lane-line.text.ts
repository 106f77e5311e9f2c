import type { SheetText } from '../sheet-text.ts';
import { lineNotes, lineProblems } from './lane-line-words.text.ts';

export const laneLineText: SheetText = {
  en: {
    title: "A lane's line",
    about:
      'Volume of one count and volume after the count of a lane from weighed fills, with the bands in which the mean and a single fill lie at a preset.',
    inputs: {
      counts: 'Preset of each fill',
      volumes: 'Volume of each fill',
      preset: 'Preset that is asked about',
      confidence: 'Confidence of the bands (two-sided)',
    },
    outputs: {
      afterRun: 'After-run: what passes beyond the count',
      perCount: 'Volume of one count',
      afterRunUncertainty: 'Standard uncertainty of the after-run',
      perCountUncertainty: 'Standard uncertainty of the volume of one count',
      correlation: 'Correlation of the two',
      scatter: 'Scatter of a fill about the line',
      dof: 'Degrees of freedom',
      volume: 'Volume at the preset',
      meanUncertainty: 'Standard uncertainty of the line there',
      meanBand: 'Half-width of the band of the mean',
      singleBand: 'Half-width of the band of a single fill',
      afterRunRatio: 'After-run over its uncertainty',
      ratioNeeded: "Student's t at this confidence",
    },
    notes: {
      ...lineNotes,
      LINE_AFTER_RUN_UNSURE: 'The after-run cannot be told from none with these fills.',
      LINE_AFTER_RUN_REAL:
        'The after-run is real: a single factor of volume over count would be wrong at other presets.',
    },
    problems: lineProblems,
  },
};

import type { SheetText } from '../sheet-text.ts';

export const gaugeStudyText: SheetText = {
  en: {
    title: 'Study of a measurement',
    about:
      'What the weighing itself and the person who weighs add to the spread of the bottles: a few bottles, weighed by two or three people, two or three times each.',
    inputs: {
      cellRanges: 'Ranges of the trials of one bottle by one person',
      operatorMeans: 'Mean of each person',
      partMeans: 'Mean of each bottle',
      trials: 'Trials of each person on each bottle',
    },
    outputs: {
      repeatability: 'Repeating, standard deviation',
      reproducibility: 'Between people',
      measuring: 'The measurement in all',
      parts: 'Between bottles',
      total: 'Everything',
      share: 'Measurement over everything',
      categories: 'Classes of bottles that can be told apart',
    },
    options: { trials: { '2': 'two', '3': 'three' } },
    notes: {
      GAUGE_COARSE:
        'No trial differed from the other: the reading is too coarse to show what repeating does.',
      GAUGE_POOR:
        'The measurement makes over 30 % of the spread: by custom it is not used to tell bottles apart.',
      GAUGE_FEW_PARTS: 'Fewer than five bottles: the spread between bottles rests on little.',
    },
    problems: {
      GAUGE_MANY: '{path}: {given} were given; the constants that we hold are for {allowed}.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { subgroupSizes } from './range-constants.ts';

const sizes = Object.fromEntries(subgroupSizes.map((size) => [size, size]));

export const gaugeStudyText: SheetText = {
  en: {
    title: 'Can the balance tell the bottles apart?',
    about:
      'What of a spread of readings is the balance and its users, and what the bottles (averages and ranges).',
    inputs: {
      meanRange: 'Mean range of one operator on one bottle',
      operatorDifference: 'Greatest less least mean of an operator',
      partRange: 'Greatest less least mean of a bottle',
      trials: 'Trials of each operator on each bottle',
      operators: 'Operators',
      parts: 'Bottles',
    },
    outputs: {
      repeatability: 'Repeatability (EV)',
      reproducibility: 'Reproducibility (AV)',
      gauge: 'Both together',
      partSpread: 'Spread of the bottles (PV)',
      total: 'Spread of all',
      share: 'Balance and users over all',
      categories: 'Groups of bottles that can be told apart',
    },
    options: { trials: sizes, operators: sizes, parts: sizes },
    notes: {
      GAUGE_COARSE:
        'More than 30 % of the spread is the balance and its users: common practice does not accept that.',
      GAUGE_MIDDLING:
        '10 to 30 % of the spread is the balance and its users: common practice accepts that for want of a better balance.',
    },
  },
};

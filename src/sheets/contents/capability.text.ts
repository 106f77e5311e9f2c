import type { SheetText } from '../sheet-text.ts';

export const capabilityText: SheetText = {
  en: {
    title: 'Capability between two limits',
    about:
      'How often the spread of the contents goes into its limits, with the limits of confidence of the index.',
    inputs: {
      lowest: 'Lower limit',
      highest: 'Upper limit',
      mean: 'Mean contents',
      spread: 'Standard deviation',
      bottles: 'Bottles measured',
      confidence: 'Confidence (two-sided)',
    },
    outputs: {
      potential: 'Cp: width over six standard deviations',
      toHighest: 'To the upper limit',
      toLowest: 'To the lower limit',
      capability: 'Cpk: the smaller of the two',
      potentialLow: 'Lower limit of Cp',
      potentialHigh: 'Upper limit of Cp',
      capabilityLow: 'Lower limit of Cpk',
      capabilityHigh: 'Upper limit of Cpk',
    },
    notes: {
      CAPABILITY_FEW: 'Of fewer than thirty bottles: the limits of confidence are wide, and count.',
      CAPABILITY_OUTSIDE: 'The mean itself lies outside the limits.',
    },
    problems: {
      CAPABILITY_LIMITS_CROSSED:
        '{path}: the upper limit of {given} is not over the lower one. Allowed: {allowed}.',
    },
  },
};

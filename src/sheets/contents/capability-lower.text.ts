import type { SheetText } from '../sheet-text.ts';
import { capabilityText } from './capability.text.ts';

export const capabilityLowerText: SheetText = {
  en: {
    title: 'Capability over one limit',
    about:
      'How many times the spread of the contents goes between mean and lower limit, with the bound that so many bottles allow.',
    inputs: {
      lowest: 'Lower limit',
      mean: 'Mean contents',
      spread: 'Standard deviation',
      bottles: 'Bottles measured',
      confidence: 'Confidence (one-sided)',
    },
    outputs: {
      capability: 'Cpk to the lower limit',
      bound: 'Lower bound of it',
      shareBelow: 'Share below the limit, by the index',
      shareBound: 'Share below the limit, by its bound',
    },
    notes: capabilityText.en.notes,
    problems: {
      CAPABILITY_TOO_GREAT:
        '{path}: the index would be {given}; a fill is not more than {allowed} times its spread from a limit. A unit may have slipped.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { lotNotes } from './lot-notes.text.ts';
import { lotVerdictWords } from './lot-words.text.ts';

export const measuringContainerText: SheetText = {
  en: {
    title: 'Bottles as measuring containers',
    about:
      'Whether a batch of bottles that are measuring containers keeps the tolerance of its capacity under OIML R 138, by 35 bottles.',
    inputs: {
      capacity: 'Capacity as stated, nominal or brimful',
      measured: 'Capacities as measured at 20 °C, of the same kind',
    },
    outputs: {
      verdict: 'The batch',
      tolerance: 'Tolerance to either side',
      more: 'Bottles still to measure',
      mean: 'Mean capacity',
      spread: 'Standard deviation',
      upper: 'Upper figure against the largest capacity',
      lower: 'Lower figure against the smallest capacity',
      largestSpread: 'Largest standard deviation',
    },
    options: { verdict: lotVerdictWords },
    notes: {
      RULE_AUTHORITY: lotNotes.RULE_AUTHORITY,
      CONTAINER_SURPLUS:
        'More than 35 bottles were given: the first ones in their order were judged, the others were not looked at.',
      CONTAINER_ONE_SIDED:
        'The mean lies to one side of the stated capacity by more than chance: the tolerance may not be used systematically.',
    },
    problems: {
      CONTAINER_NOT_REACHED: '{path}: the table goes from 50 mL to 5 L.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';

export const measuredAllowanceText: SheetText = {
  en: {
    title: 'A measured change between two floors',
    about: 'What a measurement says in the place of an allowance: the share and its standard deviation.',
    inputs: {
      shift: 'By how much the value is another there',
      halfWidth: 'Half width that holds the truth with 95 %',
    },
    outputs: {
      deviation: 'Standard deviation',
      lower: 'Lower bound',
      upper: 'Upper bound',
    },
    notes: { MEASURED_SURE: 'No spread was written: the share counts as exactly known. Write one.' },
  },
};

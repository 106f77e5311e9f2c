import type { SheetText } from '../sheet-text.ts';

export const backflowLossText: SheetText = {
  en: {
    title: 'Behind a backflow preventer',
    about: 'Pressure that a reduced-pressure backflow preventer leaves, as a band.',
    inputs: {
      pressure: 'Pressure before it, flowing',
      lowLoss: 'Loss, at the least',
      highLoss: 'Loss, at the most',
    },
    outputs: { least: 'Pressure behind it, at the least', most: 'Pressure behind it, at the most' },
    notes: {
      BACKFLOW_MEMORY:
        'A loss of 0.7 to 1.0 bar, nearly the same at every flow, is from memory: take the maker’s curve of the device.',
      BACKFLOW_NOTHING_LEFT: 'Nothing may be left behind it: a larger supply, or a break tank with a pump.',
      BACKFLOW_RULES:
        'Whether a device or an air gap is needed, and who tests it yearly, is said by the local plumbing code and the water utility.',
      BACKFLOW_DUMPS: 'It may spit all its flow from the relief port: a drain of that size below it.',
    },
    problems: { BACKFLOW_BAND: '{path}: the most lies below the least. Allowed: {allowed}.' },
  },
};

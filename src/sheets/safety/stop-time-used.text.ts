import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const stopTimeUsedText: SheetText = {
  en: {
    title: 'Stop time that is used',
    about:
      'The stop time for a distance from repeated stops: the highest, or three standard deviations over the mean.',
    inputs: { readings: 'Stop times read', wear: 'Added for wear' },
    outputs: {
      highest: 'Highest',
      mean: 'Mean',
      sd: 'Standard deviation',
      spread: 'Mean and three standard deviations',
      settledBy: 'Settled by',
      time: 'Stop time that is used',
    },
    options: { settledBy: { highest: 'the highest', spread: 'mean and three standard deviations' } },
    notes: {
      ...notesOf('CAUTION_GUARDING'),
      STOP_READINGS_FEW: 'Only {n} stops; the rule wants {wanted} or more. No distance rests on these.',
      STOP_NO_WEAR: 'Nothing is added for wear: brakes and valves stop later with the years.',
      STOP_MEASURE_AGAIN:
        'Measure again on the other floor: air pressure, mains frequency and load move it. Then at the intervals of the instructions.',
      STOP_RULE_MEMORY: 'The rule of ten stops and three standard deviations is from memory.',
    },
  },
};

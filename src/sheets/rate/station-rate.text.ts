import type { SheetText } from '../sheet-text.ts';
import { ceilingNote } from './ceiling-note.text.ts';

export const stationRateText: SheetText = {
  en: {
    title: 'Rate of a station with several heads',
    about: 'Heads that work at the same time on bottles which come a set at a time.',
    inputs: { heads: 'Heads', perBottle: 'Time of a head for a bottle', lanes: 'Bottles in a set' },
    outputs: { rate: 'Rate', setTime: 'Time for a set' },
    notes: {
      RATE_CEILING: ceilingNote.en,
      STATION_HEADS_IDLE: 'Heads without a bottle in the last turn of each set: {idle}.',
    },
    problems: { STATION_NOT_WHOLE: '{path}: {given} is not a whole number. Accepted: {allowed}.' },
  },
};

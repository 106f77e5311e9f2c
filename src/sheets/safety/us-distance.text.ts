import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const usDistanceText: SheetText = {
  en: {
    title: 'Distance by the US form',
    about: 'Least distance of a device before a danger with the hand speed of 63 in/s.',
    inputs: { time: 'Overall stop time', penetration: 'Depth penetration' },
    outputs: { distance: 'Least distance' },
    notes: {
      ...notesOf('CAUTION_GUARDING', 'DISTANCE_STOP_MEASURED', 'DISTANCE_OTHER_WAYS'),
      US_FOR_PRESSES:
        '29 CFR 1910.217 is written for mechanical power presses; elsewhere it is used by custom.',
      US_NO_PENETRATION:
        'No depth penetration is counted: the rule for presses names none, consensus standards add one by the resolution.',
    },
  },
};

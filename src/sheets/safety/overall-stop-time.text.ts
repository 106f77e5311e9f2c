import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const overallStopTimeText: SheetText = {
  en: {
    title: 'Overall stop time',
    about: 'Time from entering a field, or letting a button go, until the danger has ended.',
    inputs: { device: 'Of the device', control: 'Of the control', machine: 'Of the machine' },
    outputs: { time: 'Overall stop time' },
    notes: {
      ...notesOf('CAUTION_GUARDING'),
      STOP_COUNTED_ONCE:
        'A stop time measured from the device on has the device and the control in it: give those as 0, or they count twice.',
    },
  },
};

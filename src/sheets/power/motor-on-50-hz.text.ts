import type { SheetText } from '../sheet-text.ts';
import { asWritten } from './as-written.ts';
import { notesOf } from './notes.text.ts';

export const motorOn50HzText: SheetText = {
  en: {
    title: '60 Hz motor on 50 Hz',
    about: 'Which 60 Hz motor gives a power on a 50 Hz supply.',
    inputs: { power: 'Power asked at 50 Hz', supply: 'Voltage at 50 Hz', enclosure: 'Motor' },
    outputs: { share: 'Share of the plate', needed: 'Needed on the plate', rating: 'Next plate rating' },
    options: {
      supply: asWritten(['190/380/475', '200/400/500', '208/415/520']),
      enclosure: { open: 'open', enclosed: 'totally enclosed' },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      FIFTY_HERTZ_TABLE:
        'For a plate of 230, 460 or 575 V at 60 Hz, by one maker’s table; the result has a service factor of 1.0. The maker of the motor in hand decides. It turns at five sixths of the speed.',
    },
  },
};

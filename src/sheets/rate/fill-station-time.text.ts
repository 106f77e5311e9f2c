import type { SheetText } from '../sheet-text.ts';

export const fillStationTimeText: SheetText = {
  en: {
    title: 'Time of the fill station',
    about:
      'One set of bottles from the first movement into the station until the place is free for the next.',
    inputs: {
      travelIn: 'Travel in',
      lift: 'Lift',
      lag: 'Run gathering speed',
      filling: 'Slowest lane',
      drip: 'Drip',
      lower: 'Lower',
      clearOut: 'Clear out',
    },
    outputs: { time: 'Time of the fill station' },
    notes: {},
  },
};

import type { SheetText } from '../sheet-text.ts';

export const indexPeriodText: SheetText = {
  en: {
    title: 'Index on this floor',
    about:
      'Stroke and dwell of an index where the mains have another frequency than the drive was rated for, or the air moves the cylinders slower. A drive behind an inverter has a stretch of 1.',
    inputs: {
      stroke: 'Stroke at the rated frequency',
      dwell: 'Dwell at the rated frequency',
      stretch: 'Rated frequency over that of the floor',
      dwellBy: 'What ends the dwell',
      added: 'Time that its cylinders take longer on this floor',
    },
    outputs: { index: 'Index', strokeHere: 'Stroke on this floor', dwellHere: 'Dwell on this floor' },
    notes: {
      INDEX_OTHER_FREQUENCY:
        'Computed in proportion to the frequency. Whether motor, gear and mechanism may run at this frequency is for their makers to say; stop times change with it and are to be measured again.',
      INDEX_CYLINDERS_ADDED:
        'The stroke counts that the cylinders of the index take another time at the pressure of this floor; it is computed, so measure it once the machine runs.',
    },
    problems: {
      INDEX_NOT_POSITIVE: 'No time would be left for the stroke: the cylinders cannot be that much faster.',
    },
    options: { dwellBy: { timer: 'a timer', drive: 'the drive' } },
  },
};

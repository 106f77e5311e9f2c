import type { SheetText } from '../sheet-text.ts';

export const capChuteText: SheetText = {
  en: {
    title: 'Cap chute with two sensors',
    about:
      'The high sensor stops the sorter, the low one starts it: how long it runs and rests, how often it starts, and whether the caps below the low sensor last until it delivers.',
    inputs: {
      low: 'Caps below the low sensor',
      high: 'Caps below the high sensor',
      feed: 'Caps that the sorter brings',
      use: 'Caps that the closing station takes',
      runUp: 'Time from the signal to the first cap',
    },
    outputs: {
      refill: 'Sorter runs for',
      drain: 'Sorter rests for',
      duty: 'Share of time that the sorter runs',
      starts: 'Starts of the sorter',
      reserve: 'Caps below the low sensor last',
      reserveNeeded: 'Caps needed below the low sensor',
    },
    notes: {
      CHUTE_RESERVE_SHORT: 'The chute runs empty before the sorter delivers: the closing station will stop.',
      CHUTE_RUN_UP_UNKNOWN:
        'Counted as if the sorter delivered at once. Time it, from the signal to the first cap.',
    },
    problems: {
      CHUTE_SENSORS_SWAPPED:
        '{path}: {given} caps are no more than stand below the low sensor; the sensors may be swapped. Accepted: {allowed}.',
      CHUTE_FEED_SLOW:
        '{path}: {given} caps a second are no more than the closing station takes, so that the chute never fills. Accepted: {allowed}.',
    },
  },
};

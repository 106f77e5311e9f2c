import type { SheetText } from '../sheet-text.ts';

export const fillTimeText: SheetText = {
  en: {
    title: 'Time of a two-speed fill',
    about: 'Time of a fill that runs fast, then slow for its last part.',
    inputs: {
      volume: 'Volume',
      slowVolume: 'Volume at the slow speed',
      fastFlow: 'Fast flow',
      slowFlow: 'Slow flow',
      delay: 'Opening and closing',
    },
    outputs: { fillTime: 'Time' },
    notes: { FILL_SLOW_NOT_SLOWER: 'The slow flow is greater than the fast one.' },
    problems: { FILL_SLOW_VOLUME: 'The part at slow speed cannot be more than the whole.' },
  },
};

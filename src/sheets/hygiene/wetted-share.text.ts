import type { SheetText } from '../sheet-text.ts';

export const wettedShareText: SheetText = {
  en: {
    title: 'Share of an index that wets',
    about: 'Share of the index in which a spray wets, where it wets a share of the dwell.',
    inputs: { part: 'Share of the dwell in which it wets', dwell: 'Dwell', index: 'Index' },
    outputs: { share: 'Share of the index in which it wets' },
    notes: {},
    problems: { DWELL_OVER_INDEX: '{path}: "{given}" is longer than the index that it is a part of.' },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const leakLoadUnloadText: SheetText = {
  en: {
    title: 'Leak by loaded and unloaded time',
    about: 'With every user shut, the share of the time that the compressor is loaded is what leaks.',
    inputs: { loaded: 'Time loaded', unloaded: 'Time unloaded', delivery: 'Delivery of the compressor' },
    outputs: { share: 'Share that leaks', leak: 'Leak' },
    notes: {
      LEAK_NEGLECTED:
        'Over a tenth: well-kept systems lose less than 10 % of the capacity, neglected ones 20 to 30 %.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      LEAK_NEVER_UNLOADS:
        'A compressor that never unloads says only that the leak is at least its delivery; no figure follows.',
    },
  },
};

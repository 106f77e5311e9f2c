import type { SheetText } from '../sheet-text.ts';
import { classWords, purityNotes } from './purity.text.ts';

export const waterClassText: SheetText = {
  en: {
    title: 'Purity class of water',
    about: 'Class of ISO 8573-1 that a pressure dew point, or liquid water in the line, meets.',
    inputs: { dewPoint: 'Pressure dew point', liquid: 'Liquid water (0 where there is none)' },
    outputs: { waterClass: 'Class of water' },
    notes: purityNotes,
    options: { waterClass: classWords },
  },
};

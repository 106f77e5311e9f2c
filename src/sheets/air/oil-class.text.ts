import type { SheetText } from '../sheet-text.ts';
import { classWords, purityNotes } from './purity.text.ts';

export const oilClassText: SheetText = {
  en: {
    title: 'Purity class of oil',
    about: 'Class of ISO 8573-1 that the oil in the air, liquid, aerosol and vapour together, meets.',
    inputs: { oil: 'Oil in all forms' },
    outputs: { oilClass: 'Class of oil' },
    notes: purityNotes,
    options: { oilClass: classWords },
  },
};

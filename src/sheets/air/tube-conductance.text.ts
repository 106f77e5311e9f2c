import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const tubeConductanceText: SheetText = {
  en: {
    title: 'Conductance of a tube',
    about:
      'Sonic conductance and critical pressure ratio of a pneumatic tube, to put it in series with valve and fittings.',
    inputs: { bore: 'Bore of the tube', length: 'Length of the tube' },
    outputs: { conductance: 'Sonic conductance C', criticalRatio: 'Critical pressure ratio b' },
    notes: {
      TUBE_FROM_MEMORY:
        'The coefficients are from memory. A pipe computed with friction and the usual loss at its ends passes within 13 % of the same, for smooth tubes of 2.5 to 13 mm and 0.3 to 20 m; narrow fittings, kinks and long coils take more.',
      TUBE_NOT_COMPARED: 'Outside the bores and lengths that were compared: compute it as a pipe.',
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
  },
};

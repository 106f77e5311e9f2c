import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';
import { changesNoFrequency } from './transformer-size.text.ts';

export const autotransformerText: SheetText = {
  en: {
    title: 'Autotransformer between near voltages',
    about: 'Rating of a buck-boost transformer that fits 208 V to 230 V plates, for example.',
    inputs: {
      load: 'Apparent power of the load',
      supplyVoltage: 'Voltage of the supply',
      loadVoltage: 'Voltage of the load',
    },
    outputs: {
      rating: 'Rating of the transformer',
      supplyCurrent: 'Current from the supply',
      loadCurrent: 'Current to the load',
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      ...changesNoFrequency,
      AUTOTRANSFORMER_NO_NEUTRAL:
        'It makes no neutral and separates nothing: the earthing of the supply stays that of the load (from memory).',
      AUTOTRANSFORMER_WIDE:
        'Over 30 % between the voltages an isolating transformer is the usual way; the saving is small.',
    },
  },
};

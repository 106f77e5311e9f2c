import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const transformerVoltageText: SheetText = {
  en: {
    title: 'Voltage behind a transformer',
    about: 'What a transformer gives where another voltage than that of its plate arrives at it.',
    inputs: {
      voltage: 'Voltage that arrives',
      primary: 'Primary voltage of the plate',
      secondary: 'Secondary voltage of the plate',
    },
    outputs: { secondary: 'Voltage behind it' },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      TRANSFORMER_OWN_DROP:
        'The drop of the transformer itself is left out: under load it takes up to its percent impedance.',
    },
  },
};

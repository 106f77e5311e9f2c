import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const transformerDeviceUsText: SheetText = {
  en: {
    title: 'Device at a transformer, US',
    about: 'Greatest overcurrent device on a side of a transformer up to 1000 V.',
    inputs: { current: 'Rated current of that side', side: 'Side' },
    outputs: { share: 'Share of the rated current', limit: 'Limit', rating: 'Standard rating' },
    options: {
      side: {
        'primary-alone': 'primary, no device on the secondary',
        'primary-with-secondary': 'primary, with a device on the secondary',
        secondary: 'secondary',
      },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'NEC_240_6', 'ROUNDED_UP'),
      NEC_450_3:
        'Rule set: US, NEC 450.3(B): 125 % is as transcribed, the shares of 167, 250 and 300 % are from memory. The conductors have their own rule.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const changesNoFrequency = {
  TRANSFORMER_CHANGES_NO_FREQUENCY:
    'A transformer changes the voltage, never the frequency: motors at another frequency stay a question of their own.',
} as const;

export const transformerSizeText: SheetText = {
  en: {
    title: 'Size of a transformer',
    about: 'Standard three-phase transformer for a line whose voltage the site does not have.',
    inputs: {
      voltage: 'Secondary voltage, line to line',
      current: 'Design current',
      spare: 'Spare',
      list: 'List of sizes',
    },
    outputs: { needed: 'Needed', size: 'Standard size', ratedCurrent: 'Its rated current' },
    options: { list: { us: 'US', iec: 'IEC' } },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      TRANSFORMER_LIST_US: 'US sizes as makers list them; 4.5 and 22.5 kVA are not made by all.',
      TRANSFORMER_LIST_IEC:
        'IEC sizes as makers list them from 100 kVA on; under that, preferred numbers of ISO 3, series R10.',
      TRANSFORMER_SMALL_FROM_MEMORY:
        'That IEC 60076-1 prefers these numbers is from memory, and not every maker has each of them.',
      ...changesNoFrequency,
    },
  },
};

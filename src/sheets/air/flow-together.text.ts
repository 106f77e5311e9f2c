import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const flowTogetherText: SheetText = {
  en: {
    title: 'Several users of air together',
    about: 'Free air that several users draw at the same moment through one pipe.',
    inputs: { flows: 'Flow of each user' },
    outputs: { flow: 'Flow of all' },
    notes: { AIR_REFERENCE: notes.AIR_REFERENCE, CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const wetSteamText: SheetText = {
  en: {
    title: 'Wet steam',
    about: 'Wet steam that gives as much heat as a flow of dry steam.',
    inputs: { dry: 'Dry steam', dryness: 'Dryness, share by mass' },
    outputs: { steam: 'Wet steam' },
    notes: notesOf('CAUTION_STEAM'),
  },
};

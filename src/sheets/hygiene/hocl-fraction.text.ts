import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const hoclFractionText: SheetText = {
  en: {
    title: 'Hypochlorous acid at a pH',
    about: 'Share of free chlorine that is hypochlorous acid, the part that kills, at 20 °C.',
    inputs: { acidity: 'pH', chlorine: 'Free chlorine' },
    outputs: {
      share: 'Share that is hypochlorous acid',
      hypochlorous: 'Hypochlorous acid, counted as chlorine',
    },
    notes: {
      ...notesOf('CHLORINE_STRIP_TOTAL', 'CAUTION_CHEMICAL'),
      CHLORINE_ACID:
        'Under pH 5 chlorine gas begins to leave the water (memory): never bring acid and hypochlorite together.',
    },
  },
};

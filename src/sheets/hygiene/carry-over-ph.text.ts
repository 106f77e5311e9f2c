import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const carryOverPhText: SheetText = {
  en: {
    title: 'Caustic carried into a chlorine station',
    about:
      'Caustic that bottles carry into a chlorine station, the pH that it makes, and the share of the chlorine that stays hypochlorous acid.',
    inputs: {
      rate: 'Bottle rate',
      carry: 'Liquid carried by a bottle',
      carried: 'Sodium hydroxide carried in',
      makeUp: 'Fresh water into the station',
    },
    outputs: {
      caustic: 'Sodium hydroxide in the station',
      acidity: 'pH in the end',
      share: 'Share that is hypochlorous acid',
    },
    notes: {
      ...notesOf('UNBUFFERED', 'CHLORINE_STRIP_TOTAL', 'WEIGH_TWENTY', 'CAUTION_CHEMICAL'),
      CARRY_OVER_SPOILS:
        'Less than half of the chlorine is hypochlorous acid: the strip still reads the full strength. More rinse before, more make-up, or a measured pH.',
    },
  },
};

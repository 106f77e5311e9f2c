import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const surroundingsDeratingText: SheetText = {
  en: {
    title: 'Derating of a motor by heat and altitude',
    about: 'What a motor may still give in a hall over 40 °C or over 1000 m.',
    inputs: { ambient: 'Temperature of the hall', altitude: 'Height above sea level' },
    outputs: { factor: 'Derating factor' },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      SURROUNDINGS_ONE_MAKER:
        'Factors of one maker for motors on the mains with a plate for 40 °C and 1000 m; another allows 1 % less for each 100 m over 1000 m (0.95 at 1500 m, not 0.97). Ask the maker of the motor, and of an inverter.',
      SURROUNDINGS_DERATE: 'Warmer or higher than the plate holds for: it may give less than its plate.',
    },
  },
};

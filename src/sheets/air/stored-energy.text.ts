import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const storedEnergyText: SheetText = {
  en: {
    title: 'Energy stored in compressed air',
    about: 'Work that the air in a volume can do when it gets out.',
    inputs: { volume: 'Volume', pressure: 'Pressure', atmosphere: 'Atmospheric pressure' },
    outputs: { energy: 'Largest work against the atmosphere', upperFigure: 'Upper figure in use' },
    notes: {
      ENERGY_RESIDUAL:
        'After isolation all stored energy is to be relieved or held, and watched where it can build up again (US 29 CFR 1910.147(d)(5), read in a copy; ISO 4414, second hand). Volumes behind check valves stay under pressure.',
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
  },
};

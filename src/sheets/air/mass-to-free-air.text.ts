import type { SheetText } from '../sheet-text.ts';
import { countingWords, referenceWords } from './reference-states.ts';

export const massToFreeAirText: SheetText = {
  en: {
    title: 'Free air of a mass flow',
    about: 'Flow of free air, at a reference state, that a mass flow of dry air is.',
    inputs: { massFlow: 'Dry air', to: 'Reference state', counting: 'Humidity of the state' },
    outputs: { flow: 'Flow at that state' },
    notes: {},
    options: { to: referenceWords, counting: countingWords },
  },
};

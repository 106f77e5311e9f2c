import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const npshRequiredHereText: SheetText = {
  en: {
    title: 'Suction head required at another speed',
    about: 'Net positive suction head that a pump requires at the frequency of this floor.',
    inputs: {
      required: 'NPSH required at the speed of the curve',
      ratio: 'Speed here over that of the curve',
    },
    outputs: { required: 'NPSH required here' },
    notes: {
      NPSH_FLOW_MOVES:
        'It holds at a flow moved in the same proportion; at another flow read the curve there first. Real pumps fall short of the square when slowed far (memory): take the curve of the maker for this speed.',
      PUMP_SPEED_FAR: notes.PUMP_SPEED_FAR,
    },
  },
};

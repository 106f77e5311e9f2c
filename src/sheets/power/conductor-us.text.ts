import type { SheetText } from '../sheet-text.ts';
import { conductorPlaceInputs, conductorPlaceOptions } from './conductor-place.text.ts';
import { notesOf } from './notes.text.ts';

export const conductorUsText: SheetText = {
  en: {
    title: 'Smallest copper conductor, US',
    about: 'The smallest size that may carry a load by US rules, where the electrician has declared none.',
    inputs: { current: 'Current of the load', load: 'Kind of load', ...conductorPlaceInputs },
    outputs: {
      needed: 'Ampacity needed',
      size: 'Smallest size',
      allowed: 'Its allowed ampacity',
      tableNeeded: 'Table value needed before correction',
    },
    options: {
      load: {
        motor: 'one motor',
        continuous: 'continuous, not a motor',
        'not-continuous': 'not continuous',
        'ampacity-as-given': 'the ampacity needed, already worked out',
      },
      ...conductorPlaceOptions,
    },
    notes: {
      ...notesOf(
        'CAUTION_ELECTRICAL',
        'NEC_310_16',
        'TERMINALS_75',
        'SMALL_CONDUCTOR',
        'TABLE_CURRENT_NOT_NAMEPLATE',
      ),
      EDITION_OTHER_SIZE: 'The other edition of the table gives another size here: {other}.',
      CHECK_DROP_TOO: 'A long run may need more than this for its voltage drop.',
    },
  },
};

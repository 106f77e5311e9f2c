import type { SheetText } from '../sheet-text.ts';
import { asWritten } from './as-written.ts';
import { notesOf } from './notes.text.ts';
import { usSizes } from './us-conductors.ts';

export const impedanceUsText: SheetText = {
  en: {
    title: 'Impedance of a copper conductor, US',
    about: 'Resistance and reactance of a conductor in conduit, at its temperature and frequency.',
    inputs: {
      size: 'Size',
      conduit: 'Conduit',
      temperature: 'Temperature of the conductor',
      frequency: 'Frequency',
      powerFactor: 'Power factor',
    },
    outputs: {
      resistance: 'Resistance',
      reactance: 'Reactance',
      effective: 'Effective impedance for the drop',
    },
    options: { size: asWritten(usSizes), conduit: { pvc: 'PVC', steel: 'steel' } },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'NEC_CHAPTER_9'),
      IMPEDANCE_TO_NEUTRAL:
        'To neutral: times current and length it gives the drop line to neutral, times root 3 the drop line to line.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const sonicConductanceText: SheetText = {
  en: {
    title: 'Sonic conductance from Cv or Kv',
    about: 'C of ISO 6358 of a valve whose data sheet gives only its Cv or Kv.',
    inputs: { flowCoefficient: 'Flow coefficient', criticalRatio: 'Critical pressure ratio b' },
    outputs: { conductance: 'Sonic conductance C', effectiveArea: 'Effective area' },
    notes: {
      CONDUCTANCE_NO_FACTOR:
        'No single factor leads from Cv to C: 4.0 dm3/(s bar) a Cv where b is 0.3, 3.3 where it is 0.5. A measured C is better.',
      RESTRICTION_NOZZLE: notes.RESTRICTION_NOZZLE,
    },
  },
};

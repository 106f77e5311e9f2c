import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const valveCvText: SheetText = {
  en: {
    title: 'Valve for a stroke time, US method',
    about: 'The rough flow coefficient that a technician expects for a cylinder that must move in a time.',
    inputs: {
      area: 'Area of the piston',
      stroke: 'Stroke',
      time: 'Time of the stroke',
      compressionFactor: 'Compression factor',
      dropFactor: 'Pressure-drop factor',
    },
    outputs: { flowCoefficient: 'Flow coefficient' },
    notes: {
      VALVE_CV_ROUGH:
        'Rough: no load, no exhaust side, no tubes. The stroke time with its load is the check; some documents print the drop factor as 1/B (0.048 for 20.8).',
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
  },
};

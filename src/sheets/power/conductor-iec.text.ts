import type { SheetText } from '../sheet-text.ts';
import { cablePlaceInputs, cablePlaceOptions, coolerThanTable } from './cable-place.text.ts';
import { notesOf } from './notes.text.ts';

export const conductorIecText: SheetText = {
  en: {
    title: 'Device and smallest cable, IEC',
    about:
      'Rating of the device and smallest copper PVC cable for a design current, where the electrician has declared none.',
    inputs: { current: 'Design current', protection: 'Device', ...cablePlaceInputs },
    outputs: { rating: 'Rating of the device', size: 'Smallest section', allowed: 'Its allowed ampacity' },
    options: {
      protection: { 'circuit-breaker': 'circuit breaker', fuse: 'gG fuse' },
      ...cablePlaceOptions,
    },
    notes: {
      ...notesOf(
        'CAUTION_ELECTRICAL',
        'IEC_60364_5_52',
        'IEC_RATINGS_FROM_MEMORY',
        'IEC_METHODS_DIFFER',
        'IEC_ROW_FROM_MEMORY',
      ),
      IEC_COORDINATION:
        'The rule between load, device and cable and the 1.6 of a fuse are from memory (IEC 60364-4-43, IEC 60269). Drop, fault loop and short-circuit withstand are to be checked too.',
      ...coolerThanTable,
    },
  },
};

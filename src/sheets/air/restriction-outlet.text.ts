import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const restrictionOutletText: SheetText = {
  en: {
    title: 'Pressure behind a valve, a tube or a coupling',
    about:
      'Pressure that is left behind a component while a flow goes through it, by its sonic conductance and critical pressure ratio (ISO 6358).',
    inputs: {
      flow: 'Free air',
      pressure: 'Pressure before',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature of the air',
      conductance: 'Sonic conductance C',
      criticalRatio: 'Critical pressure ratio b',
    },
    outputs: { outletPressure: 'Pressure behind', loss: 'Pressure loss' },
    notes: {
      AIR_OUTLET_BELOW_ATMOSPHERE: notes.AIR_OUTLET_BELOW_ATMOSPHERE,
      RESTRICTION_NOZZLE: notes.RESTRICTION_NOZZLE,
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      AIR_RESTRICTION_CHOKES:
        'The component chokes: it cannot pass this flow at this pressure, whatever lies behind it.',
    },
  },
};

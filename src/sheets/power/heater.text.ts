import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const heaterText: SheetText = {
  en: {
    title: 'Heater at another voltage',
    about: 'Power and current of a resistance heater at the voltage of the site, or connected differently.',
    inputs: {
      power: 'Rated power',
      ratedVoltage: 'Rated voltage',
      supplyVoltage: 'Voltage of the supply',
      phases: 'Phases',
      connection: 'Connection against the plate',
    },
    outputs: {
      power: 'Power',
      current: 'Line current',
      elementVoltage: 'Voltage of an element over its rated one',
      heatUpTime: 'Heat-up time over the rated one, before losses',
    },
    options: {
      phases: { 'three-phase': 'three-phase', 'single-phase': 'single-phase' },
      connection: {
        unchanged: 'unchanged',
        'delta-to-star': 'from delta to star',
        'star-to-delta': 'from star to delta',
      },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      HEATER_OVER_VOLTAGE:
        'Elements over 5 % above their rated voltage fail early and may overheat what they touch.',
      HEATER_SLOW: 'Over a tenth longer to heat up than on the plate, before losses.',
      HEATER_PROTECTION_MOVES:
        'Wires, contactor, device and temperature limiter follow the new current and power.',
    },
    problems: {
      HEATER_NO_STAR: '{path}: a single-phase heater has no star or delta; allowed: {allowed}.',
    },
  },
};

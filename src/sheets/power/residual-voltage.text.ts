import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const residualVoltageText: SheetText = {
  en: {
    title: 'Residual voltage after disconnection',
    about: 'How long a filter or a converter keeps its voltage after the supply is off.',
    inputs: {
      peak: 'Voltage at the start (peak, or link voltage)',
      resistance: 'Discharge resistance',
      capacitance: 'Capacitance',
      allowed: 'Voltage allowed',
    },
    outputs: { time: 'Time until then', afterFiveSeconds: 'Voltage after 5 s' },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      RESIDUAL_RULE:
        'Rule set: IEC 60204-1, 6.2.4: at most 60 V within 5 s of disconnection; exposed plug pins 1 s. A calculation replaces no test for absence of voltage.',
      RESIDUAL_SLOW: 'Slower than 5 s: a warning with the waiting time is needed, and a test before work.',
      RESIDUAL_CHARGE_SMALL: 'At most 60 µC are stored: outside the rule.',
    },
  },
};

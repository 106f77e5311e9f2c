import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const earthFaultLoopText: SheetText = {
  en: {
    title: 'Earth-fault loop and disconnection',
    about: 'How fast an earth fault must be disconnected by IEC rules, and how low the loop must be for it.',
    inputs: {
      system: 'Earthing',
      circuit: 'Circuit',
      voltage: 'Voltage to earth',
      tripCurrent: 'Current that opens the device in that time',
      residualCurrent: 'Residual-current device',
    },
    outputs: {
      time: 'Longest time',
      loop: 'Highest loop impedance',
      electrode: 'Highest resistance of the electrode, TT',
    },
    options: {
      system: { tn: 'TN', tt: 'TT' },
      circuit: {
        'final-up-to-32-a': 'final circuit up to 32 A',
        'distribution-or-over-32-a': 'distribution, or over 32 A',
      },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      LOOP_RULE_SET:
        'Rule set: IEC 60364-4-41 by BS 7671 table 41.1, alternating current. US rules have no such table: there the equipment grounding conductor and ground-fault protection count.',
      LOOP_LONG_TIMES_FROM_MEMORY: '5 s in TN and 1 s in TT are from memory.',
      LOOP_TT_DEVICE:
        'In TT the residual-current device disconnects; 50 V as the limit of touch voltage is from memory.',
      LOOP_MEASURE_QUALIFIED:
        'Measured by a qualified person; the loop is higher when the conductors are warm.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const offVoltageText: SheetText = {
  en: {
    title: 'Motor at another voltage',
    about: 'What a voltage that is not the one on the plate does to a motor at its own frequency.',
    inputs: { ratedVoltage: 'Voltage on the plate', supplyVoltage: 'Voltage at the motor' },
    outputs: {
      ratio: 'Voltage over the one on the plate',
      torque: 'Starting and greatest torque over rated',
      slip: 'Slip over rated',
      current: 'Full-load current over rated',
      startCurrent: 'Starting current over rated',
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      VOLTAGE_FAR: 'Beyond 10 %: outside what NEMA and IEC 60034-1 allow a motor at all.',
      VOLTAGE_HIGH_SATURATES:
        'Over the rated voltage the table prints a little less current, but modern motors with well-used iron draw more (from memory): measure.',
      VOLTAGE_LOW:
        'Low voltage: the motor draws more and runs hotter at the same load, and its starting torque falls with the square.',
      OVERLOAD_SET_ANEW: 'The overload relay follows the current on the plate at this voltage.',
    },
  },
};

import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const overloadSettingText: SheetText = {
  en: {
    title: 'Setting of an overload relay',
    about: 'How high the overload relay of a motor may be set, from the nameplate current.',
    inputs: {
      current: 'Nameplate current at this voltage',
      rule: 'Rule set',
      mark: 'Marked on the plate',
      place: 'Place of the relay',
    },
    outputs: {
      rated: 'Current through the relay at rated load',
      highest: 'Highest setting',
      ceiling: 'Ceiling where the motor will not start or carry',
    },
    options: {
      rule: { us: 'US (NEC)', iec: 'IEC' },
      mark: {
        'service-factor-1.15-or-rise-40': 'service factor 1.15 or more, or rise of 40 °C or less',
        neither: 'neither',
      },
      place: { 'in-line': 'in the line', 'inside-delta': 'inside the delta' },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      OVERLOAD_US:
        'Rule set: US, NEC 430.32, 2008 edition as transcribed. These are ceilings, never rounded up; a dual-voltage plate has a current for each voltage, so the relay is set anew when the voltage changes.',
      OVERLOAD_IEC:
        'Rule set: IEC. Set at the nameplate current of the voltage in use; the trip class follows the start.',
    },
  },
};

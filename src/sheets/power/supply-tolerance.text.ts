import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const supplyToleranceText: SheetText = {
  en: {
    title: 'Supply against the plate',
    about: 'How far voltage and frequency of a supply lie from a plate and what is left of the tolerance.',
    inputs: {
      plateVoltage: 'Voltage on the plate',
      supplyVoltage: 'Voltage of the supply',
      plateFrequency: 'Frequency on the plate',
      supplyFrequency: 'Frequency of the supply',
      rule: 'Tolerance of',
    },
    outputs: {
      voltageDeviation: 'Deviation of the voltage',
      frequencyDeviation: 'Deviation of the frequency',
      voltageLeft: 'Left for the voltage',
      frequencyLeft: 'Left for the frequency',
    },
    options: {
      rule: {
        'nema-mg-1': 'NEMA MG 1',
        'iec-60204-1': 'IEC 60204-1, machine',
        'iec-60034-zone-a': 'IEC 60034-1, zone A, continuous',
        'iec-60034-zone-b': 'IEC 60034-1, zone B, not for long',
      },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      SUPPLY_OUTSIDE: 'Outside the tolerance: a transformer, a drive or another winding is needed.',
      SUPPLY_INSIDE_ON_PAPER:
        'Inside on paper only: less is left than the 3 % that a feeder may usually lose before the motor.',
      TOLERANCE_FROM_MEMORY: 'The figures of IEC 60034-1 are from memory.',
      PLATE_AND_SYSTEM_DIFFER:
        'US plates are a step below their system on purpose: 200 on 208, 230 on 240, 460 on 480, 575 on 600 V. A 230 V plate is not made for 208 V.',
    },
  },
};

import type { SheetCase } from '../sheet-case.ts';

const derived = { title: 'constant volts per hertz', place: 'hand calculation', mark: 'computed' } as const;
const rounding = { relative: 1e-9, reason: 'rounding of doubles' } as const;

export const driveFrequencyCases: readonly SheetCase[] = [
  {
    name: 'an index drive of 50 Hz at 25 rpm, wanted 30 rpm: 60 Hz, five sixths of the torque',
    source: derived,
    inputs: { frequency: 50, speed: 25 / 60, wanted: 30 / 60, plateFrequency: 50 },
    outputs: { frequency: 60, torqueShare: 5 / 6, voltageShare: 1 },
    tolerance: rounding,
    notes: ['CAUTION_ELECTRICAL', 'DRIVE_FIELD_WEAK'],
  },
  {
    name: 'a motor of 60 Hz slowed to a third: 20 Hz, a third of the voltage, full torque',
    source: derived,
    inputs: { frequency: 60, speed: 30, wanted: 10, plateFrequency: 60 },
    outputs: { frequency: 20, torqueShare: 1, voltageShare: 1 / 3 },
    tolerance: rounding,
    notes: ['DRIVE_SLOW_COOLING'],
  },
];

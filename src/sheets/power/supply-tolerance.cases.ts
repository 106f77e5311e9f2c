import type { SheetCase } from '../sheet-case.ts';

export const supplyToleranceCases: readonly SheetCase[] = [
  {
    name: '230 V plate on 208 V: -9.6 %, which leaves 0.4 % for all drops: inside NEMA on paper only',
    source: { title: 'NEMA MG 1', place: '10 % read on a public page, arithmetic apart', mark: 'computed' },
    inputs: {
      plateVoltage: 230,
      supplyVoltage: 208,
      plateFrequency: 60,
      supplyFrequency: 60,
      rule: 'nema-mg-1',
    },
    outputs: { voltageDeviation: -0.0957, voltageLeft: 0.0043, frequencyDeviation: 0, frequencyLeft: 0.05 },
    tolerance: { absolute: 1e-4, reason: 'hundredth of a per cent' },
    notes: ['CAUTION_ELECTRICAL', 'SUPPLY_INSIDE_ON_PAPER'],
  },
  {
    name: 'NEMA: 4 % of frequency and 7 % of voltage together are over 10 %',
    source: { title: 'NEMA MG 1', place: 'sum of deviations, public page', mark: 'read' },
    inputs: {
      plateVoltage: 400,
      supplyVoltage: 428,
      plateFrequency: 50,
      supplyFrequency: 52,
      rule: 'nema-mg-1',
    },
    outputs: { voltageLeft: -0.01, frequencyLeft: 0.01 },
    tolerance: { absolute: 1e-9, reason: 'rounding of doubles' },
    notes: ['SUPPLY_OUTSIDE'],
  },
  {
    name: 'IEC 60204-1: 0.9 to 1.1 of the voltage, 0.99 to 1.01 of the frequency',
    source: { title: 'IEC 60204-1', edition: '2018', place: '4.3.2, report form', mark: 'read' },
    inputs: {
      plateVoltage: 400,
      supplyVoltage: 360,
      plateFrequency: 50,
      supplyFrequency: 50.5,
      rule: 'iec-60204-1',
    },
    outputs: { voltageLeft: 0, frequencyLeft: 0 },
    tolerance: { absolute: 1e-9, reason: 'rounding of doubles' },
    notes: ['SUPPLY_INSIDE_ON_PAPER'],
  },
];

import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { frequencies, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';

export type ToleranceRule = 'nema-mg-1' | 'iec-60204-1' | 'iec-60034-zone-a' | 'iec-60034-zone-b';

interface Band {
  readonly voltage: number;
  readonly over: number;
  readonly under: number;
  /** Greatest sum of both deviations, where there is one. */
  readonly sum?: number;
}

/** Shares of voltage, and of frequency over and under. */
const bands: Readonly<Record<ToleranceRule, Band>> = {
  'nema-mg-1': { voltage: 0.1, over: 0.05, under: 0.05, sum: 0.1 },
  'iec-60204-1': { voltage: 0.1, over: 0.01, under: 0.01 },
  'iec-60034-zone-a': { voltage: 0.05, over: 0.02, under: 0.02 },
  'iec-60034-zone-b': { voltage: 0.1, over: 0.03, under: 0.05 },
};
const toleranceRules = Object.keys(bands) as ToleranceRule[];

/** What a feeder alone may usually lose; less left than this is a tolerance on paper. */
const usualDrop = 0.03;

/**
 * How far a supply lies from the plate and what is left of the tolerance.
 *
 * Method   left = band - |deviation|; NEMA also |dU| + |df| <= 10 %
 * Symbols  voltages V and frequencies Hz of plate and supply
 * Returns  deviations with sign and what is left of both, as shares; below 0 is outside
 * Cost     O(1)
 * Source   NEMA MG 1, IEC 60204-1 4.3.2; IEC 60034-1 figures from memory
 */
export const supplyTolerance = (
  plateVoltage: number,
  supplyVoltage: number,
  plateFrequency: number,
  supplyFrequency: number,
  rule: ToleranceRule,
) => {
  const band = bands[rule];
  const voltageDeviation = supplyVoltage / plateVoltage - 1;
  const frequencyDeviation = supplyFrequency / plateFrequency - 1;
  const ofFrequency = Math.abs(frequencyDeviation);
  const held = band.sum === undefined ? band.voltage : Math.min(band.voltage, band.sum - ofFrequency);
  return {
    voltageDeviation,
    frequencyDeviation,
    voltageLeft: held - Math.abs(voltageDeviation),
    frequencyLeft: (frequencyDeviation > 0 ? band.over : band.under) - ofFrequency,
  };
};

interface SupplyToleranceInputs {
  readonly plateVoltage: number;
  readonly supplyVoltage: number;
  readonly plateFrequency: number;
  readonly supplyFrequency: number;
  readonly rule: ToleranceRule;
}

/** Deviations are differences of doubles near one. */
const rounding = 1e-9;

export const supplyToleranceSheet = defineSheet({
  id: 'power/supply-tolerance',
  version: 1,
  inputs: {
    plateVoltage: numberField('voltage', 'U_N', voltages),
    supplyVoltage: numberField('voltage', 'U', voltages),
    plateFrequency: numberField('frequency', 'f_N', frequencies),
    supplyFrequency: numberField('frequency', 'f', frequencies),
    rule: choiceField<ToleranceRule>('\\text{rule}', toleranceRules),
  },
  outputs: {
    voltageDeviation: numberField('ratio', '\\delta_U'),
    frequencyDeviation: numberField('ratio', '\\delta_f'),
    voltageLeft: numberField('ratio', 'm_U'),
    frequencyLeft: numberField('ratio', 'm_f'),
  },
  formula: [
    '\\delta_U = \\frac{U}{U_N} - 1, \\quad \\delta_f = \\frac{f}{f_N} - 1',
    'm_U = b_U - | \\delta_U |, \\quad m_f = b_f - | \\delta_f |, \\quad \\text{NEMA: } b_U = \\min ( 10\\,\\%,\\ 10\\,\\% - | \\delta_f | )',
  ],
  limits: [
    caution,
    {
      code: 'SUPPLY_OUTSIDE',
      broken: (_, { voltageLeft, frequencyLeft }) => voltageLeft < -rounding || frequencyLeft < -rounding,
    },
    {
      code: 'SUPPLY_INSIDE_ON_PAPER',
      broken: (_, { voltageLeft, frequencyLeft, voltageDeviation }) =>
        voltageDeviation < 0 &&
        voltageLeft >= -rounding &&
        frequencyLeft >= -rounding &&
        voltageLeft < usualDrop,
    },
    { code: 'TOLERANCE_FROM_MEMORY', broken: ({ rule }) => rule.startsWith('iec-60034') },
    always('PLATE_AND_SYSTEM_DIFFER'),
  ],
  sources: [
    { title: 'NEMA MG 1', place: 'variation of voltage and frequency, public page', mark: 'read' },
    {
      title: 'IEC 60204-1',
      edition: '2018',
      place: '4.3.2, report form, public transcription',
      mark: 'read',
    },
    { title: 'IEC 60034-1', place: 'zones A and B', mark: 'memory' },
  ],
  compute: (i: SupplyToleranceInputs) =>
    supplyTolerance(i.plateVoltage, i.supplyVoltage, i.plateFrequency, i.supplyFrequency, i.rule),
});

import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, effectOfVoltage } from './sources.ts';

export const offVoltageCases: readonly SheetCase[] = [
  {
    name: 'table at 90 %: torque -19 %, slip +23 %',
    source: effectOfVoltage,
    inputs: { ratedVoltage: 460, supplyVoltage: 414 },
    outputs: { torque: 0.81, slip: 1.23 },
    tolerance: { relative: 5e-3, reason: 'printed in whole per cents' },
    notes: ['CAUTION_ELECTRICAL', 'VOLTAGE_LOW'],
  },
  {
    name: 'table at 90 %: full-load current +11 %, starting current -10 to -12 %',
    source: effectOfVoltage,
    inputs: { ratedVoltage: 460, supplyVoltage: 414 },
    outputs: { current: 1.11, startCurrent: 0.89 },
    tolerance: { absolute: 0.0101, reason: 'printed as a range of two per cents' },
  },
  {
    name: 'table at 110 %: torque +21 %, slip -17 %',
    source: effectOfVoltage,
    inputs: { ratedVoltage: 460, supplyVoltage: 506 },
    outputs: { torque: 1.21, slip: 0.83 },
    tolerance: { relative: 5e-3, reason: 'printed in whole per cents' },
    notes: ['VOLTAGE_HIGH_SATURATES'],
  },
  {
    name: '230 V motor on 208 V: ratio 0.904, torque 0.818, slip 1.223, current 1.106',
    source: arithmetic,
    inputs: { ratedVoltage: 230, supplyVoltage: 208 },
    outputs: { ratio: 0.904, torque: 0.818, slip: 1.223, current: 1.106 },
    tolerance: { relative: 5e-3, reason: 'three digits' },
  },
];

import type { SheetCase } from '../sheet-case.ts';
import { iapws95 } from './sources.ts';

export const drainMixCases: readonly SheetCase[] = [
  {
    name: '0.5 L/s at 80, 1.5 L/s at 15 and 0.2 L/s at 60 degC: 33.5 degC',
    source: iapws95,
    inputs: { flows: [5e-4, 1.5e-3, 2e-4], temperatures: [353.15, 288.15, 333.15] },
    outputs: { temperature: 273.15 + 33.542508, flow: 2.2e-3, tempering: 0 },
    tolerance: { relative: 3e-5, reason: 'IAPWS-95 against IF97; a hundredth of a kelvin' },
    notes: ['DRAIN_NO_PH'],
  },
  {
    name: '1 L/s at 80 degC down to 60 degC with water of 15 degC: 0.433 L/s',
    source: iapws95,
    inputs: { flows: [1e-3], temperatures: [353.15], limit: 333.15, cold: 288.15 },
    outputs: { tempering: 4.331974e-4 },
    tolerance: { relative: 5e-4, reason: 'IAPWS-95 against IF97' },
    notes: ['DRAIN_TOO_HOT'],
  },
  {
    name: '3 and 1 parts of 60 and 20 degC: 50 degC by masses alone',
    source: { title: 'mean of the temperatures by mass', place: 'hand calculation', mark: 'computed' },
    inputs: { flows: [3e-3 * (998.2 / 983.2), 1e-3], temperatures: [333.15, 293.15] },
    outputs: { temperature: 323.15 },
    tolerance: { absolute: 0.05, reason: 'the specific heat of water moves by 0.1 % on the way' },
  },
];

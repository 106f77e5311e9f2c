import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import { effectOfVoltage } from './sources.ts';

/**
 * What another voltage at its own frequency does to a cage motor at full load.
 *
 * Method   v = U/U_N; starting and greatest torque v^2, slip 1/v^2, full-load current 1/v, starting current v
 * Symbols  voltage, rated  scalar  V
 * Returns  ratios to the values on the plate
 * Assumes  constant power at the shaft, iron not saturated
 * Cost     O(1)
 * Source   table of the effect of voltage on induction motors
 */
export const offVoltage = (voltage: number, rated: number) => {
  const v = voltage / rated;
  return { ratio: v, torque: v * v, slip: 1 / (v * v), current: 1 / v, startCurrent: v };
};

interface OffVoltageInputs {
  readonly ratedVoltage: number;
  readonly supplyVoltage: number;
}

export const offVoltageSheet = defineSheet({
  id: 'power/off-voltage',
  version: 1,
  inputs: {
    ratedVoltage: numberField('voltage', 'U_N', voltages),
    supplyVoltage: numberField('voltage', 'U', voltages),
  },
  outputs: {
    ratio: numberField('ratio', 'v'),
    torque: numberField('ratio', 'T / T_N'),
    slip: numberField('ratio', 's / s_N'),
    current: numberField('ratio', 'I / I_N'),
    startCurrent: numberField('ratio', 'I_s / I_{s,N}'),
  },
  formula: [
    'v = \\frac{U}{U_N}, \\quad \\frac{T}{T_N} = v^2, \\quad \\frac{s}{s_N} = \\frac{1}{v^2}',
    '\\frac{I}{I_N} = \\frac{1}{v}, \\quad \\frac{I_s}{I_{s,N}} = v',
  ],
  limits: [
    caution,
    { code: 'VOLTAGE_FAR', broken: (_, { ratio }) => ratio < 0.9 - 1e-9 || ratio > 1.1 + 1e-9 },
    { code: 'VOLTAGE_HIGH_SATURATES', broken: (_, { ratio }) => ratio > 1 },
    { code: 'VOLTAGE_LOW', broken: (_, { ratio }) => ratio < 0.95 },
    always('OVERLOAD_SET_ANEW'),
  ],
  sources: [effectOfVoltage],
  compute: (i: OffVoltageInputs) => offVoltage(i.supplyVoltage, i.ratedVoltage),
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { allowanceHabit } from './allowance-sources.ts';
import { changeRatios } from './fill-bounds.ts';

interface ValveAirAllowanceInputs {
  readonly airRatio: number;
}

interface ValveAirAllowanceOutputs {
  readonly shift: number;
  readonly deviation: number;
}

/** A valve's time goes with the inverse of its air pressure over the spring, give or take half of that. */
const airPower = 1;
const airDoubt = 0.5;

/**
 * By how much the after-run differs where the valves get another air.
 *
 * Method   d = 1/r - 1;  u = |d|/2
 * Symbols  airRatio  r  absolute pressure of the valves' air there over here
 * Returns  expected change of the after-run and its standard deviation, as shares
 * Assumes  the time of closing goes with the inverse of the pressure; a spring that closes alone moves nothing
 * Cost     O(1)
 * Source   common practice
 */
export const valveAirAllowance = ({ airRatio }: ValveAirAllowanceInputs): ValveAirAllowanceOutputs => {
  const shift = airRatio ** -airPower - 1;
  return { shift, deviation: airDoubt * Math.abs(shift) };
};

export const valveAirAllowanceSheet = defineSheet<ValveAirAllowanceInputs, ValveAirAllowanceOutputs>({
  id: 'contents/valve-air-allowance',
  version: 1,
  inputs: { airRatio: numberField('ratio', 'r', changeRatios) },
  outputs: { shift: numberField('ratio', 'd'), deviation: numberField('ratio', 'u') },
  formula: ['d = \\frac{1}{r} - 1, \\quad u = \\frac{|d|}{2}'],
  limits: [{ code: 'VALVE_AIR_HABIT', broken: () => true }],
  sources: [allowanceHabit],
  compute: valveAirAllowance,
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { times } from './bounds.ts';
import { always } from './caution.ts';
import { type BathInputs, bathCapacity, bathFields, noRise } from './heat-up-time.ts';
import { heatBalance, if97 } from './sources.ts';

/**
 * Power that brings a bath from one temperature to another in a time while it loses heat.
 *
 * Method   P = U (T_1 - T_a) + C (T_1 - T_0)/t y/(e^y - 1),  y = U t/C
 * Symbols  C    capacity  scalar  J/K  > 0
 *          T_0  start     scalar  K
 *          T_1  end       scalar  K    > T_0
 *          t    time      scalar  s    > 0
 *          U    loss      scalar  W/K  >= 0
 *          T_a  ambient   scalar  K
 * Returns  W that must reach the bath; 0 where the room alone warms it
 * Assumes  one temperature in the bath, loss in proportion to the difference
 * Cost     O(1)
 * Source   heat balance
 */
export const heatUpPower = (
  capacity: number,
  start: number,
  end: number,
  time: number,
  loss: number,
  ambient: number,
): number => {
  const y = (loss * time) / capacity;
  const share = y < 1e-9 ? 1 - 0.5 * y : y / Math.expm1(y);
  return Math.max(0, loss * (end - ambient) + ((capacity * (end - start)) / time) * share);
};

interface HeatUpPowerInputs extends BathInputs {
  readonly time: number;
}

export const heatUpPowerSheet = defineSheet({
  id: 'heat/heat-up-power',
  version: 1,
  inputs: { ...bathFields, time: numberField('time', 't', times) },
  outputs: {
    power: numberField('heatFlow', 'P'),
    powerWithoutLoss: numberField('heatFlow', 'P_0'),
    energyTaken: numberField('energy', 'Q'),
  },
  formula: [
    'C = \\rho V \\frac{h(T_1) - h(T_0)}{T_1 - T_0} + m c, \\quad P_0 = \\frac{C (T_1 - T_0)}{\\eta\\, t}',
    'P = \\frac{1}{\\eta} \\left[ U (T_1 - T_a) + \\frac{C (T_1 - T_0)}{t} \\frac{y}{e^y - 1} \\right], \\quad y = \\frac{U t}{C}, \\quad Q = P t',
  ],
  limits: [
    always('CAUTION_HOT_WATER'),
    { code: 'HEAT_LOSSES_LEFT_OUT', broken: ({ loss }) => loss === 0 },
    always('HEATER_CURRENT_ELSEWHERE'),
  ],
  sources: [heatBalance, if97],
  check: noRise,
  compute: (i: HeatUpPowerInputs) => {
    const capacity = bathCapacity(i.volume, i.start, i.end, i.metalMass, i.metalHeat);
    const power = heatUpPower(capacity, i.start, i.end, i.time, i.loss, i.ambient) / i.efficiency;
    return {
      power,
      powerWithoutLoss: (capacity * (i.end - i.start)) / (i.time * i.efficiency),
      energyTaken: power * i.time,
    };
  },
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import {
  efficiencies,
  heatTransfers,
  masses,
  roomTemperatures,
  someHeatFlows,
  someVolumes,
  specificHeats,
  steelHeat,
  waterTemperatures,
} from './bounds.ts';
import { always } from './caution.ts';
import { waterHeat, waterVolume } from './if97.ts';
import { heatBalance, if97 } from './sources.ts';

/**
 * Heat that a bath with its steel takes for a kelvin, mean between two temperatures.
 *
 * Method   C = rho(T_0) V (h(T_1) - h(T_0))/(T_1 - T_0) + m c
 * Symbols  V    volume     scalar  m3   of water, at the temperature at first
 *          T_0  start      scalar  K    273.15 to 373.15
 *          T_1  end        scalar  K    not T_0
 *          m    metalMass  scalar  kg   tank, pipe, what else gets warm with it
 *          c    metalHeat  scalar  J/(kg K)
 * Returns  J/K
 * Cost     O(1)
 * Source   IAPWS R7-97(2012), region 1
 */
export const bathCapacity = (
  volume: number,
  start: number,
  end: number,
  metalMass: number,
  metalHeat: number,
): number =>
  ((volume / waterVolume(101_325, start)) * waterHeat(start, end)) / (end - start) + metalMass * metalHeat;

/**
 * Time in which a heater brings a bath from one temperature to another while it loses heat.
 *
 * Method   C dT/dt = P - U (T - T_a):  t = (C/U) ln((P - U(T_0 - T_a))/(P - U(T_1 - T_a)));  C (T_1 - T_0)/P at U = 0
 * Symbols  C    capacity  scalar  J/K  > 0
 *          T_0  start     scalar  K
 *          T_1  end       scalar  K    >= T_0
 *          P    power     scalar  W    that reaches the bath
 *          U    loss      scalar  W/K  >= 0
 *          T_a  ambient   scalar  K
 * Returns  s; infinity where the losses take all the power before
 * Assumes  one temperature in the bath, loss in proportion to the difference
 * Cost     O(1)
 * Source   heat balance
 */
export const heatUpTime = (
  capacity: number,
  start: number,
  end: number,
  power: number,
  loss: number,
  ambient: number,
): number => {
  if (end <= start) return 0;
  const left = power - loss * (end - ambient);
  if (left <= 0) return Number.POSITIVE_INFINITY;
  const x = (loss * (end - start)) / left;
  return ((capacity * (end - start)) / left) * (x < 1e-9 ? 1 - 0.5 * x : Math.log1p(x) / x);
};

/** Temperature that a power holds against the loss, K; infinity where nothing is lost. */
export const heatCeiling = (power: number, loss: number, ambient: number): number =>
  loss === 0 ? Number.POSITIVE_INFINITY : ambient + power / loss;

/** Boiling at sea level, K: an open bath gets no hotter. */
const boiling = 373.15;
/** Where the temperature wanted is never reached, the time to this share of the rise is told. */
const shareTold = 0.95;

export interface BathInputs {
  readonly volume: number;
  readonly start: number;
  readonly end: number;
  readonly metalMass: number;
  readonly metalHeat: number;
  readonly loss: number;
  readonly ambient: number;
  readonly efficiency: number;
}

export const bathFields = {
  volume: numberField('volume', 'V', someVolumes),
  start: numberField('temperature', 'T_0', waterTemperatures),
  end: numberField('temperature', 'T_1', waterTemperatures),
  metalMass: numberField('mass', 'm', { ...masses, assumed: 0 }),
  metalHeat: numberField('specificHeat', 'c', { ...specificHeats, assumed: steelHeat }),
  loss: numberField('heatTransfer', 'U', { ...heatTransfers, assumed: 0 }),
  ambient: numberField('temperature', 'T_a', { ...roomTemperatures, assumed: 293.15 }),
  efficiency: numberField('ratio', '\\eta', { ...efficiencies, assumed: 1 }),
};

export const noRise = ({ start, end }: { readonly start: number; readonly end: number }) =>
  end > start ? [] : [{ code: 'HEAT_NO_RISE', path: 'end', given: end, allowed: `> ${start}` }];

interface HeatUpTimeInputs extends BathInputs {
  readonly power: number;
}

export const heatUpTimeSheet = defineSheet({
  id: 'heat/heat-up-time',
  version: 1,
  inputs: { ...bathFields, power: numberField('heatFlow', 'P', someHeatFlows) },
  outputs: {
    time: numberField('time', 't'),
    timeWithoutLoss: numberField('time', 't_0'),
    reached: numberField('temperature', 'T'),
    ceiling: numberField('temperature', 'T_\\infty'),
    energy: numberField('energy', 'Q'),
    holdingPower: numberField('heatFlow', 'P_h'),
  },
  formula: [
    'C = \\rho V \\frac{h(T_1) - h(T_0)}{T_1 - T_0} + m c, \\quad t_0 = \\frac{C (T_1 - T_0)}{\\eta P}',
    't = \\frac{C}{U} \\ln \\frac{\\eta P - U (T_0 - T_a)}{\\eta P - U (T_1 - T_a)}, \\quad T_\\infty = \\min \\left( T_a + \\frac{\\eta P}{U},\\ 100\\ \\mathrm{^\\circ C} \\right)',
    'T = T_1 \\text{ if } T_\\infty > T_1, \\text{ else } T_0 + 0.95\\,(T_\\infty - T_0), \\quad P_h = \\frac{U (T_1 - T_a)}{\\eta}',
  ],
  limits: [
    always('CAUTION_HOT_WATER'),
    { code: 'HEAT_LOSSES_LEFT_OUT', broken: ({ loss }) => loss === 0 },
    {
      code: 'HEAT_NEVER_REACHED',
      broken: ({ end }, { reached }) => reached < end,
    },
    {
      code: 'HEAT_SLOW_AT_END',
      broken: (_, { time, timeWithoutLoss }) => time > 2 * timeWithoutLoss,
    },
  ],
  sources: [heatBalance, if97],
  check: noRise,
  compute: (i: HeatUpTimeInputs) => {
    const capacity = bathCapacity(i.volume, i.start, i.end, i.metalMass, i.metalHeat);
    const power = i.efficiency * i.power;
    const held = heatCeiling(power, i.loss, i.ambient);
    const time = heatUpTime(capacity, i.start, i.end, power, i.loss, i.ambient);
    const reached =
      time < Number.POSITIVE_INFINITY
        ? i.end
        : Math.min(i.end, i.start + shareTold * Math.max(0, held - i.start));
    return {
      time: reached === i.end ? time : heatUpTime(capacity, i.start, reached, power, i.loss, i.ambient),
      timeWithoutLoss: (capacity * (i.end - i.start)) / power,
      reached,
      ceiling: Math.min(held, boiling),
      energy: capacity * (i.end - i.start),
      holdingPower: Math.max(0, (i.loss * (i.end - i.ambient)) / i.efficiency),
    };
  },
});

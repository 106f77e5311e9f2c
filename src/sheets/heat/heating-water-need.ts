import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { heatFlows, waterTemperatures } from './bounds.ts';
import { always } from './caution.ts';
import { waterHeat, waterVolume } from './if97.ts';
import { heatBalance, if97 } from './sources.ts';

/**
 * Mass of heating water that gives a heat between flow and return.
 *
 * Method   m = P/(h(T_1) - h(T_2))
 * Symbols  P    heat    scalar  W
 *          T_1  supply  scalar  K
 *          T_2  back    scalar  K  < T_1
 * Returns  kg/s
 * Cost     O(1)
 * Source   heat balance; IAPWS R7-97(2012), region 1
 */
export const heatingWaterFlow = (heat: number, supply: number, back: number): number =>
  heat / waterHeat(back, supply);

interface HeatingWaterNeedInputs {
  readonly heat: number;
  readonly supply: number;
  readonly back: number;
}

export const heatingWaterNeedSheet = defineSheet({
  id: 'heat/heating-water-need',
  version: 1,
  inputs: {
    heat: numberField('heatFlow', 'P', heatFlows),
    supply: numberField('temperature', 'T_1', waterTemperatures),
    back: numberField('temperature', 'T_2', waterTemperatures),
  },
  outputs: { flow: numberField('volumeFlow', 'Q'), massFlow: numberField('massFlow', '\\dot m') },
  formula: ['\\dot m = \\frac{P}{h(T_1) - h(T_2)}, \\quad Q = \\frac{\\dot m}{\\rho(T_1)}'],
  limits: [
    always('CAUTION_HOT_WATER'),
    { code: 'HEATING_WATER_SMALL_STEP', broken: ({ supply, back }) => supply - back < 5 },
  ],
  sources: [heatBalance, if97],
  check: ({ supply, back }) =>
    back < supply - 0.01 ? [] : [{ code: 'HEAT_NO_FALL', path: 'back', given: back, allowed: `< ${supply}` }],
  compute: ({ heat, supply, back }: HeatingWaterNeedInputs) => {
    const massFlow = heatingWaterFlow(heat, supply, back);
    return { flow: massFlow * waterVolume(101_325, supply), massFlow };
  },
});

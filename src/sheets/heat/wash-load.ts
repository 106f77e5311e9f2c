import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bottleHeatFlow } from './bottle-heat.ts';
import { type BottleMaterial, bottleMaterialNames, bottleMaterials } from './bottle-materials.ts';
import { bottleTemperatures, flows, heatFlows, rates, someMasses, waterTemperatures } from './bounds.ts';
import { always } from './caution.ts';
import { waterHeat, waterVolume } from './if97.ts';
import { heatBalance, if97, washerTable } from './sources.ts';

/**
 * Heat that a flow of water takes to come to the temperature of a bath.
 *
 * Method   P = rho(T_in) Q (h(T) - h(T_in))
 * Symbols  Q     flow   scalar  m3/s  at the temperature at which it comes
 *          T_in  inlet  scalar  K     273.15 to 373.15
 *          T     bath   scalar  K
 * Returns  W; below 0 where it heats the bath
 * Cost     O(1)
 * Source   IAPWS R7-97(2012), region 1
 */
export const waterHeatFlow = (flow: number, inlet: number, bath: number): number =>
  (flow / waterVolume(101_325, inlet)) * waterHeat(inlet, bath);

interface WashLoadInputs {
  readonly rate: number;
  readonly material: BottleMaterial;
  readonly mass: number;
  readonly entry: number;
  readonly zone: number;
  readonly carryOver: number;
  readonly carryTemperature: number;
  readonly makeUp: number;
  readonly makeUpTemperature: number;
  readonly surface: number;
  readonly walls: number;
}

export const washLoadSheet = defineSheet({
  id: 'heat/wash-load',
  version: 1,
  inputs: {
    rate: numberField('rate', 'n', rates),
    material: choiceField<BottleMaterial>('\\text{material}', bottleMaterialNames),
    mass: numberField('mass', 'm', someMasses),
    entry: numberField('temperature', 'T_{in}', bottleTemperatures),
    zone: numberField('temperature', 'T_z', waterTemperatures),
    // 0.33 to 1 L bottles carry 2 to 5 mL, jugs of 19 L 10 to 30 mL after 5 to 8 s of draining: common practice
    carryOver: numberField('volume', 'v', { least: 0, most: 0.01, assumed: 0 }),
    carryTemperature: numberField('temperature', 'T_c', { ...waterTemperatures, assumed: 293.15 }),
    makeUp: numberField('volumeFlow', 'Q', { ...flows, assumed: 0 }),
    makeUpTemperature: numberField('temperature', 'T_m', { ...waterTemperatures, assumed: 288.15 }),
    surface: numberField('heatFlow', 'P_s', { ...heatFlows, assumed: 0 }),
    walls: numberField('heatFlow', 'P_w', { ...heatFlows, assumed: 0 }),
  },
  outputs: {
    bottles: numberField('heatFlow', 'P_b'),
    carried: numberField('heatFlow', 'P_c'),
    fresh: numberField('heatFlow', 'P_m'),
    total: numberField('heatFlow', 'P'),
  },
  formula: [
    'P_b = n m c (T_z - T_{in}), \\quad P_c = n v \\rho (h(T_z) - h(T_c)), \\quad P_m = \\rho Q (h(T_z) - h(T_m))',
    'P = P_b + P_c + P_m + P_s + P_w',
  ],
  limits: [
    always('CAUTION_HOT_WATER'),
    {
      code: 'MATERIAL_FROM_MEMORY',
      broken: ({ material }) => bottleMaterials[material].heatMark === 'memory',
    },
    { code: 'WASH_NO_SURFACE', broken: ({ surface, walls }) => surface === 0 || walls === 0 },
    { code: 'WASH_HEATS_ITSELF', broken: (_, { total }) => total <= 0 },
    always('WASH_FASTER_INDEX'),
  ],
  sources: [heatBalance, if97, washerTable],
  compute: (i: WashLoadInputs) => {
    const { specificHeat } = bottleMaterials[i.material];
    const bottles = bottleHeatFlow(i.rate, i.mass, specificHeat, i.entry, i.zone);
    const carried = waterHeatFlow(i.rate * i.carryOver, i.carryTemperature, i.zone);
    const fresh = waterHeatFlow(i.makeUp, i.makeUpTemperature, i.zone);
    return { bottles, carried, fresh, total: bottles + carried + fresh + i.surface + i.walls };
  },
});

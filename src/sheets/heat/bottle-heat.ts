import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { type BottleMaterial, bottleMaterialNames, bottleMaterials } from './bottle-materials.ts';
import { bottleTemperatures, rates, someMasses } from './bounds.ts';
import { washerTable } from './sources.ts';

/**
 * Heat that a flow of bottles takes to get from one temperature to another.
 *
 * Method   P = n m c (T_1 - T_0)
 * Symbols  n    rate    scalar  1/s
 *          m    mass    scalar  kg        of one bottle
 *          c    heat    scalar  J/(kg K)
 *          T_0  from    scalar  K         as they enter this zone, not the machine
 *          T_1  to      scalar  K
 * Returns  W; below 0 where they cool
 * Assumes  the wall follows the bath: a thick glass base lags and takes less
 * Cost     O(1)
 * Source   definition of specific heat
 */
export const bottleHeatFlow = (rate: number, mass: number, heat: number, from: number, to: number): number =>
  rate * mass * heat * (to - from);

interface BottleHeatInputs {
  readonly material: BottleMaterial;
  readonly mass: number;
  readonly rate: number;
  readonly from: number;
  readonly to: number;
}

export const bottleHeatSheet = defineSheet({
  id: 'heat/bottle-heat',
  version: 1,
  inputs: {
    material: choiceField<BottleMaterial>('\\text{material}', bottleMaterialNames),
    mass: numberField('mass', 'm', someMasses),
    rate: numberField('rate', 'n', rates),
    from: numberField('temperature', 'T_0', bottleTemperatures),
    to: numberField('temperature', 'T_1', bottleTemperatures),
  },
  outputs: {
    specificHeat: numberField('specificHeat', 'c'),
    density: numberField('density', '\\rho'),
    perBottle: numberField('energy', 'q'),
    heatFlow: numberField('heatFlow', 'P'),
  },
  formula: ['q = m c (T_1 - T_0), \\quad P = n q'],
  limits: [
    {
      code: 'MATERIAL_FROM_MEMORY',
      broken: ({ material }) => bottleMaterials[material].heatMark === 'memory',
    },
  ],
  sources: [washerTable],
  compute: (i: BottleHeatInputs) => {
    const { specificHeat, density } = bottleMaterials[i.material];
    return {
      specificHeat,
      density,
      perBottle: bottleHeatFlow(1, i.mass, specificHeat, i.from, i.to),
      heatFlow: bottleHeatFlow(i.rate, i.mass, specificHeat, i.from, i.to),
    };
  },
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { areas, heights } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Surface of a tank of straight walls after a draw.
 *
 * Method   z = z_0 - V/A
 * Symbols  z_0  surface  scalar  m   when full
 *          V    drawn    scalar  m3  and not made up
 *          A    area     scalar  m2  > 0
 * Returns  height, m
 * Cost     O(1)
 * Source   mass balance
 */
export const tankLevel = (surface: number, drawn: number, area: number): number => surface - drawn / area;

interface TankLevelInputs {
  readonly surface: number;
  readonly drawn: number;
  readonly area: number;
  readonly outlet: number;
}

export const tankLevelSheet = defineSheet({
  id: 'water/tank-level',
  version: 1,
  inputs: {
    surface: numberField('length', 'z_0', heights),
    drawn: numberField('volume', 'V', { least: 0, most: 1e9 }),
    area: numberField('area', 'A', areas),
    outlet: numberField('length', 'z_a', { ...heights, assumed: -1000 }),
  },
  outputs: { level: numberField('length', 'z') },
  formula: ['z = z_0 - \\frac{V}{A}'],
  limits: [{ code: 'TANK_BELOW_OUTLET', broken: ({ outlet }, { level }) => level <= outlet }],
  sources: [derived],
  compute: (i: TankLevelInputs) => ({ level: tankLevel(i.surface, i.drawn, i.area) }),
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { heights } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Height of a surface above a point, both over the floor.
 *
 * Method   h = z_s - z
 * Symbols  z_s  surface  scalar  m  over the floor
 *          z    point    scalar  m  over the floor
 * Returns  m; negative where the surface lies below the point
 * Cost     O(1)
 * Source   definition
 */
export const heightAbove = (surface: number, point: number): number => surface - point;

interface HeightAboveInputs {
  readonly surface: number;
  readonly point: number;
}

export const heightAboveSheet = defineSheet({
  id: 'water/height-above',
  version: 1,
  inputs: {
    surface: numberField('length', 'z_s', heights),
    point: numberField('length', 'z', heights),
  },
  outputs: { height: numberField('length', 'h') },
  formula: ['h = z_s - z'],
  limits: [],
  sources: [derived],
  compute: (i: HeightAboveInputs) => ({ height: heightAbove(i.surface, i.point) }),
});

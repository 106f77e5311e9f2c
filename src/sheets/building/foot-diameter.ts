import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { structuralCaution } from './caution.ts';
import { plainGeometry } from './sources.ts';

/**
 * Diameter of a round plate of an area.
 *
 * Method   D = 2 sqrt(A/pi)
 * Symbols  A  area  scalar  m2
 * Returns  m
 * Cost     O(1)
 * Source   plane geometry
 */
export const footDiameter = (area: number): number => 2 * Math.sqrt(area / Math.PI);

interface FootDiameterInputs {
  readonly area: number;
}

export const footDiameterSheet = defineSheet({
  id: 'building/foot-diameter',
  version: 1,
  inputs: {
    area: numberField('area', 'A', { least: 1e-6, most: 100 }),
  },
  outputs: { diameter: numberField('length', 'D') },
  formula: ['D = 2 \\sqrt{\\frac{A}{\\pi}}'],
  limits: [structuralCaution],
  sources: [plainGeometry],
  compute: (i: FootDiameterInputs) => ({ diameter: footDiameter(i.area) }),
});

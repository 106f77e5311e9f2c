import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { lengths } from './bounds.ts';
import { movingCaution } from './caution.ts';
import { plainGeometry } from './sources.ts';

/**
 * Level distance from a centre of gravity to the nearer of two parallel edges of a stand that is centred under a body.
 *
 * Method   d = b/2 - |x - l/2|
 * Symbols  l  body    scalar  m
 *          b  stand   scalar  m  between the outer wheels
 *          x  centre  scalar  m  from one end of the body
 * Returns  m; 0 or less where the centre lies on the edge or beyond it
 * Cost     O(1)
 * Source   plane geometry
 */
export const edgeDistance = (body: number, stand: number, centre: number): number =>
  0.5 * stand - Math.abs(centre - 0.5 * body);

interface TippingEdgeInputs {
  readonly length: number;
  readonly width: number;
  readonly base: number;
  readonly track: number;
  readonly along: number;
  readonly across: number;
}

export const tippingEdgeSheet = defineSheet({
  id: 'building/tipping-edge',
  version: 1,
  inputs: {
    length: numberField('length', 'l', lengths),
    width: numberField('length', 'w', lengths),
    base: numberField('length', 'b', lengths),
    track: numberField('length', 't', lengths),
    along: numberField('length', 'x', { least: 0, most: lengths.most }),
    across: numberField('length', 'y', { least: 0, most: lengths.most }),
  },
  outputs: {
    alongEdge: numberField('length', 'd_x'),
    acrossEdge: numberField('length', 'd_y'),
    nearest: numberField('length', 'd'),
  },
  formula: [
    'd_x = \\frac{b}{2} - \\left| x - \\frac{l}{2} \\right|, \\quad d_y = \\frac{t}{2} - \\left| y - \\frac{w}{2} \\right|, \\quad d = \\min(d_x, d_y)',
  ],
  limits: [movingCaution, { code: 'EDGE_OUTSIDE', broken: (_, { nearest }) => nearest <= 0 }],
  sources: [plainGeometry],
  compute: (i: TippingEdgeInputs) => {
    const alongEdge = edgeDistance(i.length, i.base, i.along);
    const acrossEdge = edgeDistance(i.width, i.track, i.across);
    return { alongEdge, acrossEdge, nearest: Math.min(alongEdge, acrossEdge) };
  },
});

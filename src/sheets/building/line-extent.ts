import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { structuralCaution } from './caution.ts';
import { plainGeometry } from './sources.ts';

interface LineExtentInputs {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly lengths: readonly number[];
  readonly widths: readonly number[];
  readonly turned: readonly number[];
  readonly clearances: readonly number[];
}

/** Least and greatest coordinate of all corners along one way, m. */
const spanOf = (
  i: LineExtentInputs,
  along: (forward: number, across: number, k: number) => number,
): number => {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < i.x.length; k++) {
    const c = i.clearances[k]!;
    for (const forward of [-c, i.lengths[k]! + c]) {
      for (const across of [-c, i.widths[k]! + c]) {
        const at = along(forward, across, k);
        least = Math.min(least, at);
        most = Math.max(most, at);
      }
    }
  }
  return most - least;
};

/**
 * Length and width of the place that machines take, each a rectangle on the plan with free way around it.
 *
 * Method   corners of every rectangle: x + u cos a - v sin a along the plan, y + u sin a + v cos a across it, u from -c to
 *          l + c, v from -c to w + c; the greatest less the least of all
 * Symbols  x, y  corner    [n]  m    of the rectangle, from any point of the plan
 *          l, w  sides     [n]  m
 *          a     turned    [n]  rad  counter-clockwise about that corner
 *          c     clearance [n]  m    free on every side
 * Returns  length along x and width along y, m
 * Cost     O(n)
 * Source   plane geometry
 */
export const lineExtent = (i: LineExtentInputs): { length: number; width: number } => ({
  length: spanOf(i, (u, v, k) => i.x[k]! + u * Math.cos(i.turned[k]!) - v * Math.sin(i.turned[k]!)),
  width: spanOf(i, (u, v, k) => i.y[k]! + u * Math.sin(i.turned[k]!) + v * Math.cos(i.turned[k]!)),
});

const places = { least: -1000, most: 1000 } as const;
const sides = { least: 1e-3, most: 100 } as const;

export const lineExtentSheet = defineSheet({
  id: 'building/line-extent',
  version: 1,
  inputs: {
    x: listField('length', 'x_i', { ...places, fewest: 1 }),
    y: listField('length', 'y_i', { ...places, fewest: 1 }),
    lengths: listField('length', 'l_i', { ...sides, fewest: 1 }),
    widths: listField('length', 'w_i', { ...sides, fewest: 1 }),
    turned: listField('angle', '\\alpha_i', { least: -2 * Math.PI, most: 2 * Math.PI, fewest: 1 }),
    clearances: listField('length', 'c_i', { least: 0, most: 20, fewest: 1 }),
  },
  outputs: { length: numberField('length', 'L'), width: numberField('length', 'W') },
  formula: [
    'X_i = x_i + u \\cos \\alpha_i - v \\sin \\alpha_i, \\quad Y_i = y_i + u \\sin \\alpha_i + v \\cos \\alpha_i, \\quad u \\in \\{-c_i, l_i + c_i\\},\\ v \\in \\{-c_i, w_i + c_i\\}',
    'L = \\max X_i - \\min X_i, \\quad W = \\max Y_i - \\min Y_i',
  ],
  limits: [structuralCaution, { code: 'EXTENT_OPEN_DOORS', broken: () => true }],
  sources: [plainGeometry],
  check: ({ x, y, lengths, widths, turned, clearances }) =>
    listLengths({ x, y, lengths, widths, turned, clearances }),
  compute: lineExtent,
});

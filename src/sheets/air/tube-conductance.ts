import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores, lengths } from './bounds.ts';

/**
 * Sonic conductance and critical pressure ratio of a straight pneumatic tube with its ends.
 *
 * Method   C = 0.029 d^2/sqrt(L/d^1.25 + 510);  b = 474 C/d^2
 * Symbols  d  bore    scalar  m
 *          L  length  scalar  m
 * Returns  C, m3/(s Pa); b, 1
 * Assumes  smooth tube; the 510 stands for the loss at its ends
 * Cost     O(1)
 * Source   textbooks on pneumatic drives (memory of the coefficients); within 6 % of a pipe computed with friction
 */
export const tubeConductance = (
  bore: number,
  length: number,
): { readonly conductance: number; readonly criticalRatio: number } => {
  const area = bore * bore;
  const conductance = (0.029 * area) / Math.sqrt(length / bore ** 1.25 + 510);
  return { conductance, criticalRatio: (474 * conductance) / area };
};

interface TubeConductanceInputs {
  readonly bore: number;
  readonly length: number;
}

/** Where the form was compared with a pipe with friction. */
const compared = { bore: [2.5e-3, 13e-3], length: [0.3, 20] } as const;
const outside = (value: number, [low, high]: readonly [number, number]): boolean =>
  value < low * (1 - 1e-9) || value > high * (1 + 1e-9);

export const tubeConductanceSheet = defineSheet({
  id: 'air/tube-conductance',
  version: 1,
  inputs: {
    bore: numberField('length', 'd', bores),
    length: numberField('length', 'L', lengths),
  },
  outputs: {
    conductance: numberField('sonicConductance', 'C'),
    criticalRatio: numberField('ratio', 'b'),
  },
  formula: [
    'C = \\frac{0.029\\, d^2}{\\sqrt{L / d^{1.25} + 510}}, \\quad b = \\frac{474\\, C}{d^2} \\quad (\\mathrm{m}, \\mathrm{m^3/(s\\, Pa)})',
  ],
  limits: [
    { code: 'TUBE_FROM_MEMORY', broken: () => true },
    {
      code: 'TUBE_NOT_COMPARED',
      broken: ({ bore, length }) => outside(bore, compared.bore) || outside(length, compared.length),
    },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [{ title: 'textbooks on pneumatic drives', place: 'conductance of tubes', mark: 'memory' }],
  compute: ({ bore, length }: TubeConductanceInputs) => tubeConductance(bore, length),
});

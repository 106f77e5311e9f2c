import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { areas, bores, dischargeCoefficients, heads } from './bounds.ts';
import { orificeConstant } from './orifice.ts';
import { closedForms } from './sources.ts';

/**
 * Time in which two vessels joined under water come nearer to one level: the fill of a bottle from below.
 *
 * Method   t = 2 A1 A2/((A1 + A2) k) (sqrt(d1) - sqrt(d2))
 * Symbols  A1  upperArea  scalar  m2  > 0
 *          A2  lowerArea  scalar  m2  > 0
 *          k   constant   scalar  m3/s per m^1/2  of `orificeConstant`
 *          d1  start      scalar  m   difference of levels at first
 *          d2  end        scalar  m   difference left, at most d1
 * Returns  time, s
 * Assumes  prismatic vessels, submerged passage, quasi-steady
 * Cost     O(1)
 * Source   separation of variables
 */
export const levellingTime = (
  upperArea: number,
  lowerArea: number,
  constant: number,
  start: number,
  end: number,
): number =>
  ((2 * upperArea * lowerArea) / ((upperArea + lowerArea) * constant)) * (Math.sqrt(start) - Math.sqrt(end));

interface TwoVesselsInputs {
  readonly upperArea: number;
  readonly lowerArea: number;
  readonly bore: number;
  readonly dischargeCoefficient: number;
  readonly startDifference: number;
  readonly endDifference: number;
}

export const twoVesselsSheet = defineSheet({
  id: 'water/two-vessels',
  version: 1,
  inputs: {
    upperArea: numberField('area', 'A_1', areas),
    lowerArea: numberField('area', 'A_2', areas),
    bore: numberField('length', 'D', bores),
    dischargeCoefficient: numberField('ratio', 'C_d', { ...dischargeCoefficients, assumed: 0.62 }),
    startDifference: numberField('length', '\\Delta_1', heads),
    endDifference: numberField('length', '\\Delta_2', heads),
  },
  outputs: { time: numberField('time', 't') },
  formula: [
    't = \\frac{2 A_1 A_2}{(A_1 + A_2) k} \\left( \\sqrt{\\Delta_1} - \\sqrt{\\Delta_2} \\right), \\quad k = C_d \\frac{\\pi D^2}{4} \\sqrt{2 g}',
  ],
  limits: [],
  sources: [closedForms],
  check: ({ startDifference, endDifference }) =>
    endDifference > startDifference
      ? [
          {
            code: 'VESSELS_DIFFERENCE',
            path: 'endDifference',
            given: endDifference,
            allowed: `<= ${startDifference}`,
          },
        ]
      : [],
  compute: (i: TwoVesselsInputs) => ({
    time: levellingTime(
      i.upperArea,
      i.lowerArea,
      orificeConstant(i.bore, i.dischargeCoefficient),
      i.startDifference,
      i.endDifference,
    ),
  }),
});

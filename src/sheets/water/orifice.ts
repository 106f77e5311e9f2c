import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { bores, dischargeCoefficients, heads } from './bounds.ts';
import { britannica } from './sources.ts';

/**
 * Speed of a free jet under a head.
 *
 * Method   v = C_v sqrt(2 g H)
 * Symbols  H    head                 scalar  m      >= 0, to the middle of the hole; submerged: difference of the levels
 *          C_v  velocityCoefficient  ratio   0 to 1
 * Returns  velocity, m/s
 * Cost     O(1)
 * Source   Torricelli
 */
export const jetVelocity = (head: number, velocityCoefficient: number): number =>
  velocityCoefficient * Math.sqrt(2 * standardGravity * head);

/**
 * Flow through a hole under a head, over the root of the head: Q = k sqrt(H).
 *
 * Method   k = C_d pi/4 D^2 sqrt(2 g)
 * Symbols  D    bore                  scalar  m      > 0
 *          C_d  dischargeCoefficient  ratio   0.61 sharp edge, 0.82 mouthpiece, 0.97 rounded
 * Returns  k, m3/s per root of m
 * Cost     O(1)
 * Source   definition of the coefficient of discharge
 */
export const orificeConstant = (bore: number, dischargeCoefficient: number): number =>
  dischargeCoefficient * 0.25 * Math.PI * bore * bore * Math.sqrt(2 * standardGravity);

/** Flow through a hole under a head, m3/s: Q = k sqrt(H) with k of `orificeConstant`. */
export const orificeFlow = (head: number, bore: number, dischargeCoefficient: number): number =>
  orificeConstant(bore, dischargeCoefficient) * Math.sqrt(head);

interface OrificeInputs {
  readonly head: number;
  readonly bore: number;
  readonly dischargeCoefficient: number;
  readonly velocityCoefficient: number;
}

export const orificeSheet = defineSheet({
  id: 'water/orifice',
  version: 1,
  inputs: {
    head: numberField('length', 'H', heads),
    bore: numberField('length', 'D', bores),
    dischargeCoefficient: numberField('ratio', 'C_d', { ...dischargeCoefficients, assumed: 0.62 }),
    velocityCoefficient: numberField('ratio', 'C_v', { ...dischargeCoefficients, assumed: 0.97 }),
  },
  outputs: {
    flow: numberField('volumeFlow', 'Q'),
    jetVelocity: numberField('velocity', 'v_j'),
  },
  formula: ['Q = C_d \\frac{\\pi D^2}{4} \\sqrt{2 g H}', 'v_j = C_v \\sqrt{2 g H}'],
  limits: [{ code: 'ORIFICE_LOW_HEAD', broken: ({ head, bore }) => head < bore }],
  sources: [britannica],
  compute: (i: OrificeInputs) => ({
    flow: orificeFlow(i.head, i.bore, i.dischargeCoefficient),
    jetVelocity: jetVelocity(i.head, i.velocityCoefficient),
  }),
});

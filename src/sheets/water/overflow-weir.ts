import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { bores, dischargeCoefficients } from './bounds.ts';
import { orificeFlow } from './orifice.ts';
import { swmmOrifice } from './sources.ts';

/** Sharp rim: 0.414 sqrt(2 g) = 1.833 m^0.5/s. Francis' 3.33 ft^0.5/s is 1.838. */
const weir = 0.414 * Math.sqrt(2 * standardGravity);

/**
 * Flow into a vertical overflow pipe.
 *
 * Method   the lower of the weir over its rim, 0.414 sqrt(2 g) pi D h^1.5, and the hole of its bore, C_d pi/4 D^2 sqrt(2 g h)
 * Symbols  D    bore                  scalar  m
 *          h    head                  scalar  m      of the surface over the rim
 *          C_d  dischargeCoefficient  ratio   of the rim as a hole
 * Returns  flow, m3/s
 * Assumes  the pipe below runs free and takes air; sharp rim
 * Cost     O(1)
 * Source   EPA SWMM, notes on its bottom orifice: the same two branches, meeting where they are equal
 */
export const overflowFlow = (bore: number, head: number, dischargeCoefficient: number): number =>
  Math.min(weir * Math.PI * bore * head ** 1.5, orificeFlow(head, bore, dischargeCoefficient));

interface OverflowWeirInputs {
  readonly bore: number;
  readonly head: number;
  readonly dischargeCoefficient: number;
}

export const overflowWeirSheet = defineSheet({
  id: 'water/overflow-weir',
  version: 1,
  inputs: {
    bore: numberField('length', 'D', bores),
    head: numberField('length', 'h', { least: 0, most: 100 }),
    dischargeCoefficient: numberField('ratio', 'C_d', { ...dischargeCoefficients, assumed: 0.62 }),
  },
  outputs: { flow: numberField('volumeFlow', 'Q') },
  formula: [
    'Q = \\min \\left( 0.414 \\sqrt{2 g}\\, \\pi D h^{1.5},\\ C_d \\frac{\\pi D^2}{4} \\sqrt{2 g h} \\right)',
  ],
  limits: [{ code: 'OVERFLOW_DROWNING', broken: ({ head, bore }) => head > bore / 5 }],
  sources: [swmmOrifice],
  compute: (i: OverflowWeirInputs) => ({ flow: overflowFlow(i.bore, i.head, i.dischargeCoefficient) }),
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { bores, densities, flows, lengths } from './bounds.ts';
import { pipeVelocity } from './pipe-velocity.ts';
import { epanetManual } from './sources.ts';

/**
 * Head lost in a town main after Hazen and Williams.
 *
 * Method   h = 10.67 L Q^1.852/(C^1.852 D^4.8704)
 * Symbols  Q  flow    scalar  m3/s  any sign
 *          D  bore    scalar  m
 *          L  length  scalar  m
 *          C  factor  scalar  m^0.37/s, 80 an old main to 150 plastic
 * Returns  head, m, with the sign of the flow
 * Assumes  water near 15 degC, under 3 m/s
 * Cost     O(1), three powers
 * Source   SI form of EPANET 2.2 User Manual, table 3.1
 */
export const hazenWilliamsHead = (flow: number, bore: number, length: number, factor: number): number =>
  (Math.sign(flow) * 10.67 * length * (Math.abs(flow) / factor) ** 1.852) / bore ** 4.8704;

interface HazenWilliamsInputs {
  readonly flow: number;
  readonly bore: number;
  readonly length: number;
  readonly factor: number;
  readonly density: number;
}

export const hazenWilliamsSheet = defineSheet({
  id: 'water/hazen-williams',
  version: 1,
  inputs: {
    flow: numberField('volumeFlow', 'Q', flows),
    bore: numberField('length', 'D', bores),
    length: numberField('length', 'L', lengths),
    factor: numberField('ratio', 'C', { least: 10, most: 200 }),
    density: numberField('density', '\\rho', { ...densities, assumed: 999.1 }),
  },
  outputs: {
    velocity: numberField('velocity', 'v'),
    headLoss: numberField('length', 'h'),
    loss: numberField('pressureDifference', '\\Delta p'),
  },
  formula: ['h = \\frac{10.67\\, L\\, Q^{1.852}}{C^{1.852} D^{4.8704}}, \\quad \\Delta p = \\rho g h'],
  limits: [
    { code: 'HAZEN_FAST', broken: (_, { velocity }) => velocity > 3 },
    { code: 'HAZEN_SMALL_BORE', broken: ({ bore }) => bore < 0.05 },
  ],
  sources: [epanetManual],
  compute: ({ flow, bore, length, factor, density }: HazenWilliamsInputs) => {
    const headLoss = hazenWilliamsHead(flow, bore, length, factor);
    return { velocity: pipeVelocity(flow, bore), headLoss, loss: density * standardGravity * headLoss };
  },
});

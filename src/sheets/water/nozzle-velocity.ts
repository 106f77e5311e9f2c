import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores, flows } from './bounds.ts';
import { pipeVelocity } from './pipe-velocity.ts';
import { derived } from './sources.ts';

/** Trial values of the trade, no standard gives one: still water, and foaming product before the nozzle is covered. */
const stillWater = 1.5;
const foaming = 0.5;

/** Mean velocity at a nozzle's mouth: the formula of `pipeVelocity` on the bore of the mouth. */
export const nozzleVelocitySheet = defineSheet({
  id: 'water/nozzle-velocity',
  version: 1,
  inputs: {
    flow: numberField('volumeFlow', 'q', flows),
    bore: numberField('length', 'D_n', bores),
  },
  outputs: { velocity: numberField('velocity', 'v_n') },
  formula: ['v_n = \\frac{4 q}{\\pi D_n^2}'],
  limits: [
    {
      code: 'NOZZLE_FOAMING',
      broken: (_, { velocity }) => velocity > foaming && velocity <= stillWater,
    },
    { code: 'NOZZLE_FAST', broken: (_, { velocity }) => velocity > stillWater },
  ],
  sources: [derived],
  compute: (i: { readonly flow: number; readonly bore: number }) => ({
    velocity: pipeVelocity(i.flow, i.bore),
  }),
});

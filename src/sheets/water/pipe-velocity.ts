import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores, flows } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Mean velocity in a full round pipe.
 *
 * Method   v = 4 Q/(pi D^2)
 * Symbols  Q  flow  scalar  m3/s  any sign
 *          D  bore  scalar  m     > 0; a nominal size is not a bore
 * Returns  velocity, m/s, with the sign of the flow
 * Cost     O(1)
 * Source   continuity
 */
export const pipeVelocity = (flow: number, bore: number): number => flow / (0.25 * Math.PI * bore * bore);

/** 8 ft/s: the highest that a US plumbing code allows in building water pipes (section 10.14.1, read in a transcription). */
const buildingHighest = 2.4384;

export const pipeVelocitySheet = defineSheet({
  id: 'water/pipe-velocity',
  version: 1,
  inputs: {
    flow: numberField('volumeFlow', 'Q', flows),
    bore: numberField('length', 'D', bores),
  },
  outputs: { velocity: numberField('velocity', 'v') },
  formula: ['v = \\frac{4 Q}{\\pi D^2}'],
  limits: [{ code: 'PIPE_VELOCITY_HIGH', broken: (_, { velocity }) => velocity > buildingHighest }],
  sources: [derived],
  compute: (i: { readonly flow: number; readonly bore: number }) => ({
    velocity: pipeVelocity(i.flow, i.bore),
  }),
});

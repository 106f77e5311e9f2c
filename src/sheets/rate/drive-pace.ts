import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { definition } from './sources.ts';

/**
 * Share by which a drive that runs straight on the supply stretches its times on another frequency.
 *
 * Method   sigma = f_N/f
 * Symbols  f_N  rated  scalar  Hz  of the plate
 *          f    here   scalar  Hz  of the floor
 * Returns  ratio; under 1 it runs faster
 * Assumes  the slip stays what it was
 * Cost     O(1)
 * Source   a motor turns with the frequency
 */
export const drivePace = (rated: number, here: number): number => rated / here;

interface DrivePaceInputs {
  readonly rated: number;
  readonly here: number;
}

export const drivePaceSheet = defineSheet({
  id: 'rate/drive-pace',
  version: 1,
  inputs: {
    rated: numberField('frequency', 'f_N', { least: 1, most: 400 }),
    here: numberField('frequency', 'f', { least: 1, most: 400 }),
  },
  outputs: { stretch: numberField('ratio', '\\sigma') },
  formula: ['\\sigma = \\frac{f_N}{f}'],
  limits: [{ code: 'PACE_FAR', broken: (_, { stretch }) => stretch < 0.8 || stretch > 1.25 }],
  sources: [definition],
  compute: ({ rated, here }: DrivePaceInputs) => ({ stretch: drivePace(rated, here) }),
});

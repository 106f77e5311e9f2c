import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores, kinematicViscosities, velocities } from './bounds.ts';
import { laminarBelow, turbulentAbove } from './friction-factor.ts';
import { epanetManual } from './sources.ts';

/**
 * Reynolds number of flow in a full round pipe.
 *
 * Method   Re = |v| D / nu
 * Symbols  v   velocity            scalar  m/s   any sign
 *          D   bore                scalar  m     > 0
 *          nu  kinematicViscosity  scalar  m2/s  > 0
 * Returns  number, never negative
 * Cost     O(1)
 * Source   definition; EPANET 2.2 User Manual, chapter 12, for the limits 2 000 and 4 000 used here
 */
export const reynoldsNumber = (velocity: number, bore: number, kinematicViscosity: number): number =>
  (Math.abs(velocity) * bore) / kinematicViscosity;

export const reynoldsNumberSheet = defineSheet({
  id: 'water/reynolds-number',
  version: 1,
  inputs: {
    velocity: numberField('velocity', 'v', velocities),
    bore: numberField('length', 'D', bores),
    kinematicViscosity: numberField('kinematicViscosity', '\\nu', kinematicViscosities),
  },
  outputs: { reynolds: numberField('ratio', '\\mathrm{Re}') },
  formula: ['\\mathrm{Re} = \\frac{v D}{\\nu}'],
  limits: [
    { code: 'REYNOLDS_LAMINAR', broken: (_, { reynolds }) => reynolds <= laminarBelow },
    {
      code: 'REYNOLDS_TRANSITION',
      broken: (_, { reynolds }) => reynolds > laminarBelow && reynolds < turbulentAbove,
    },
  ],
  sources: [epanetManual],
  compute: (i: {
    readonly velocity: number;
    readonly bore: number;
    readonly kinematicViscosity: number;
  }) => ({
    reynolds: reynoldsNumber(i.velocity, i.bore, i.kinematicViscosity),
  }),
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';

/** Deflection in the middle of a span at which belt tables give their force. */
const deflectionShare = 1 / 64;

/**
 * Tension of a belt from the note of its span.
 *
 * Method   F = 4 m L^2 f^2
 * Symbols  m  linearDensity  scalar  kg/m
 *          L  span           scalar  m   between the points where it leaves the pulleys
 *          f  frequency      scalar  Hz  first harmonic
 * Returns  N
 * Assumes  a limp string; a stiff belt on a short span rings higher than its tension
 * Cost     O(1)
 * Source   vibrating string, first harmonic
 */
export const beltTension = (linearDensity: number, span: number, frequency: number): number =>
  4 * linearDensity * span * span * frequency * frequency;

interface BeltTensionInputs {
  readonly linearDensity: number;
  readonly span: number;
  readonly frequency: number;
}

export const beltTensionSheet = defineSheet({
  id: 'rate/belt-tension',
  version: 1,
  inputs: {
    linearDensity: numberField('linearDensity', 'm', { least: 1e-3, most: 50 }),
    span: numberField('length', 'L', { least: 0.02, most: 20 }),
    frequency: numberField('frequency', 'f', { least: 0.5, most: 1000 }),
  },
  outputs: {
    tension: numberField('force', 'F'),
    deflection: numberField('length', 'y'),
  },
  formula: ['F = 4 m L^2 f^2, \\quad y = \\frac{L}{64}'],
  limits: [
    { code: 'BELT_STANDING', broken: () => true },
    { code: 'BELT_AGAIN', broken: () => true },
  ],
  sources: [
    { title: 'vibrating string, first harmonic', place: 'derived', mark: 'computed' },
    { title: 'belt trade', place: 'deflection of a 64th of the span', mark: 'memory' },
  ],
  compute: ({ linearDensity, span, frequency }: BeltTensionInputs) => ({
    tension: beltTension(linearDensity, span, frequency),
    deflection: span * deflectionShare,
  }),
});

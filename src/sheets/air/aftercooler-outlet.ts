import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { temperatures } from './bounds.ts';
import { derived } from './sources.ts';

const approach = {
  title: 'compressed air trade',
  place: 'approach of an aftercooler',
  mark: 'common practice',
} as const;

/**
 * Temperature of the air behind an aftercooler that the room cools.
 *
 * Method   T_2 = T_a + dT
 * Symbols  T_a  room      scalar  K
 *          dT   approach  scalar  K  8 to 12 K, from memory
 * Returns  K
 * Cost     O(1)
 * Source   definition; the approach is common practice
 */
export const aftercoolerOutlet = (room: number, approach: number): number => room + approach;

interface AftercoolerOutletInputs {
  readonly room: number;
  readonly approach: number;
}

export const aftercoolerOutletSheet = defineSheet({
  id: 'air/aftercooler-outlet',
  version: 1,
  inputs: {
    room: numberField('temperature', 'T_a', temperatures),
    approach: numberField('temperatureDifference', '\\Delta T', { least: 0, most: 50, assumed: 10 }),
  },
  outputs: { temperature: numberField('temperature', 'T_2') },
  formula: ['T_2 = T_a + \\Delta T'],
  limits: [{ code: 'AFTERCOOLER_APPROACH', broken: () => true }],
  sources: [derived, approach],
  compute: (i: AftercoolerOutletInputs) => ({ temperature: aftercoolerOutlet(i.room, i.approach) }),
});

import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { masses } from './bounds.ts';
import { statics } from './sources.ts';

/**
 * Mass of what a section holds: as it stands, less as it travels.
 *
 * Method   m = max(0, m_f - m_e)
 * Symbols  m_f  full   scalar  kg  as it stands, filled
 *          m_e  empty  scalar  kg  as it travels, drained
 * Returns  kg
 * Cost     O(1)
 * Source   balance of mass
 */
export const massAboard = (full: number, empty: number): number => Math.max(0, full - empty);

interface MassAboardInputs {
  readonly full: number;
  readonly empty: number;
}

export const massAboardSheet = defineSheet({
  id: 'building/mass-aboard',
  version: 1,
  inputs: {
    full: numberField('mass', 'm_f', masses),
    empty: numberField('mass', 'm_e', masses),
  },
  outputs: { mass: numberField('mass', 'm') },
  formula: ['m = \\max ( 0, m_f - m_e )'],
  limits: [
    { code: 'FULL_UNDER_EMPTY', broken: ({ full, empty }) => full < empty },
    { code: 'CAUTION_STRUCTURE', broken: () => true },
  ],
  sources: [statics],
  compute: (i: MassAboardInputs) => ({ mass: massAboard(i.full, i.empty) }),
});

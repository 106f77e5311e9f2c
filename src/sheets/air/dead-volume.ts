import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores, lengths, volumes } from './bounds.ts';
import { roundArea } from './cylinder-areas.ts';
import { derived } from './sources.ts';

/**
 * Volume between a valve and its piston that no stroke sweeps.
 *
 * Method   V = V_c + pi d^2 L/4
 * Symbols  d    bore       scalar  m   of the tube
 *          L    length     scalar  m   of the tube
 *          V_c  clearance  scalar  m3  at the end of the cylinder, with the passages of the valve
 * Returns  m3
 * Cost     O(1)
 * Source   geometry
 */
export const deadVolume = (bore: number, length: number, clearance: number): number =>
  clearance + roundArea(bore) * length;

interface DeadVolumeInputs {
  readonly bore: number;
  readonly length: number;
  readonly clearance: number;
}

export const deadVolumeSheet = defineSheet({
  id: 'air/dead-volume',
  version: 1,
  inputs: {
    bore: numberField('length', 'd', bores),
    length: numberField('length', 'L', lengths),
    clearance: numberField('volume', 'V_c', { ...volumes, assumed: 0 }),
  },
  outputs: { volume: numberField('volume', 'V_d') },
  formula: ['V_d = V_c + \\frac{\\pi d^2}{4} L'],
  limits: [{ code: 'DEAD_VOLUME_NO_CLEARANCE', broken: ({ clearance }) => clearance === 0 }],
  sources: [derived],
  compute: (i: DeadVolumeInputs) => ({ volume: deadVolume(i.bore, i.length, i.clearance) }),
});

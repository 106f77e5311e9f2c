import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows, times } from './bounds.ts';
import { storageManual } from './sources.ts';

/**
 * What a supply tank must give beside its make-up, so that it carries a run.
 *
 * Method   V = max(0, Q - M) T
 * Symbols  Q  draw      scalar  m3/s  >= 0   mean over the run
 *          M  makeUp    scalar  m3/s  >= 0
 *          T  duration  scalar  s     >= 0
 * Returns  volume, m3; none where the make-up covers the draw
 * Assumes  the tank is full at the start; draw and make-up are steady
 * Cost     O(1)
 * Source   mass balance
 */
export const tankForRun = (draw: number, makeUp: number, duration: number): number =>
  Math.max(0, draw - makeUp) * duration;

interface TankForRunInputs {
  readonly draw: number;
  readonly makeUp: number;
  readonly duration: number;
}

export const tankForRunSheet = defineSheet({
  id: 'rate/tank-for-run',
  version: 1,
  inputs: {
    draw: numberField('volumeFlow', 'Q', flows),
    makeUp: numberField('volumeFlow', 'M', { ...flows, assumed: 0 }),
    duration: numberField('time', 'T', times),
  },
  outputs: { usable: numberField('volume', 'V') },
  formula: ['V = \\max(0, Q - M)\\, T'],
  limits: [
    { code: 'TANK_LEVEL_FALLS', broken: (_, { usable }) => usable > 0 },
    { code: 'TANK_CARRIED_BY_MAKE_UP', broken: ({ draw, makeUp }) => makeUp >= draw },
  ],
  sources: [storageManual],
  compute: ({ draw, makeUp, duration }: TankForRunInputs) => ({ usable: tankForRun(draw, makeUp, duration) }),
});

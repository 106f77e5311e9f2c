import { standardGravity } from '../sheets/standard-gravity.ts';
import { inertiaTime } from '../sheets/water/inertia-lag.ts';
import { pipeVelocity } from '../sheets/water/pipe-velocity.ts';
import { offset } from './balance.ts';
import { full, supplyPressure } from './supply.ts';
import type { FillSystem } from './system.ts';

export interface RunInertia {
  /** Time constant T of v = v0 tanh(t/T), s; 0 where the run is not known or nothing flows. */
  readonly timeConstant: number;
  /** The whole head that drives the lanes from rest, m. */
  readonly head: number;
}

/**
 * How slowly the liquid in the run is set moving when all lanes open.
 *
 * Method   T = sum(L v0)/(g H), v0 the steady velocities with all lanes open, H the head at no flow over the jets
 * Symbols  flow  scalar  m3/s with all lanes open
 * Assumes  loss with the square of the flow, rigid column, valves that open at once
 * Source   the sheet `water/inertia-lag`
 */
export const runInertia = (system: FillSystem, flow: number): RunInertia => {
  if (system.source.kind === 'reading') return { timeConstant: 0, head: 0 };
  const { density } = system.liquid;
  let highest = Number.NEGATIVE_INFINITY;
  for (const lane of system.lanes) highest = Math.max(highest, offset(system.manifold, lane.outlet, density));
  const head = (supplyPressure(system, 0, full) + highest) / (density * standardGravity);
  let lengthVelocity = 0;
  for (const piece of system.run) {
    if (piece.kind === 'pipe') lengthVelocity += piece.length * pipeVelocity(flow, piece.bore);
  }
  return { timeConstant: head > 0 ? inertiaTime(lengthVelocity, head) : 0, head };
};

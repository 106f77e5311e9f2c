import { pipeVelocity } from '../sheets/water/pipe-velocity.ts';
import { surgePressure } from '../sheets/water/surge.ts';
import type { RowFill } from './filled-row.ts';
import type { FillSystem, Pipe } from './system.ts';

export interface RunSurge {
  /** Rise over the steady pressure, Pa. */
  readonly rise: number;
  /** Lanes whose closing falls together. */
  readonly lanes: readonly string[];
  /** Flow that they cut, m3/s. */
  readonly flow: number;
  /** Shortest closing among them, s. */
  readonly closing: number;
  /** Length of the run, m, and the velocity that stands for all of it, m/s. */
  readonly length: number;
  readonly velocity: number;
}

/** Speed of sound in water between stiff walls, m/s: no pipe wall gives more, so the rise is never understated. */
export const stiffWaveSpeed = 1480;

/**
 * Rise of pressure at the manifold when the lanes close whose strokes overlap.
 *
 * Method   the largest group of lanes that reach their counts within one closing stroke; their flows add up in the run;
 *          pieces in series act as one pipe of the whole length L at v = sum(L_i v_i)/L
 * Returns  rise and what made it; none without pipe
 * Assumes  the flow is cut linearly; walls as stiff as can be unless the wave speed is given
 * Source   the sheet `water/surge`
 */
export const runSurge = (system: FillSystem, row: RowFill, waveSpeed = stiffWaveSpeed): RunSurge => {
  const pipes = system.run.filter((piece): piece is Pipe => piece.kind === 'pipe' && piece.length > 0);
  const length = pipes.reduce((sum, pipe) => sum + pipe.length, 0);
  let best: RunSurge = { rise: 0, lanes: [], flow: 0, closing: 0, length, velocity: 0 };
  if (length === 0) return best;
  for (const [i, first] of row.lanes.entries()) {
    const stroke = system.lanes[i]!.closing;
    const together = row.lanes.filter(
      (lane) => lane.countTime >= first.countTime && lane.countTime <= first.countTime + stroke,
    );
    const flow = together.reduce((sum, lane) => sum + lane.flowAtEnd, 0);
    const velocity =
      pipes.reduce((sum, pipe) => sum + pipe.length * pipeVelocity(flow, pipe.bore), 0) / length;
    const rise = surgePressure(system.liquid.density, waveSpeed, length, velocity, stroke);
    if (rise > best.rise) {
      best = { rise, lanes: together.map((lane) => lane.lane), flow, closing: stroke, length, velocity };
    }
  }
  return best;
};

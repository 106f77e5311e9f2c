import type { HourRate } from './hour-rate.ts';

/** A line whose period depends on what is drawn from its tank. */
export interface DrawnLine {
  /** Seconds a fill of all lanes with this much drawn and not made up, m3; infinity where nothing flows. */
  readonly periodAt: (drawn: number) => number;
  readonly lanes: number;
  /** m3 of one fill of all lanes */
  readonly draw: number;
  /** m3/s */
  readonly makeUp: number;
  /** m3; infinity where nothing limits it */
  readonly usable: number;
}

export interface HourEstimate {
  readonly rate: HourRate;
  readonly drawnMost: number;
  readonly ranDry?: number;
}

/** Steps of the integration: the level moves smoothly, and only a difference of two hours is wanted. */
const steps = 24;

/**
 * Rate over an agreed time from a tank that falls, as a flow instead of row by row.
 *
 * Method   dV/dt = draw/period(V) - make-up, between full and dry, by the midpoint rule; bottles = sum lanes/period dt; a
 *          dry tank gives what its make-up fills
 * Symbols  V         drawn and not made up  scalar  m3
 *          duration  scalar                 s
 * Returns  mean and worst rate, most drawn, when it ran dry
 * Assumes  a row is short against the time in which the level moves; for the difference of two like floors, not for either
 * Cost     two periods a step
 * Source   mass balance
 */
export const hourEstimate = (line: DrawnLine, duration: number): HourEstimate => {
  const { lanes, draw, makeUp, usable } = line;
  const dt = duration / steps;
  const dryRate = draw > 0 ? Math.min(makeUp / draw, 1 / line.periodAt(Math.min(usable, 1e9))) : 0;
  const fillsAt = (drawn: number): number =>
    drawn >= usable ? dryRate : Math.max(0, 1 / line.periodAt(drawn));
  let drawn = 0;
  let fills = 0;
  let most = 0;
  let worst = fillsAt(0);
  let ranDry: number | undefined;
  for (let i = 0; i < steps; i++) {
    const now = fillsAt(drawn);
    const half = Math.min(usable, Math.max(0, drawn + 0.5 * dt * (now * draw - makeUp)));
    // a step in which the tank runs dry is parted below, not begun dry
    const middle = half >= usable ? now : fillsAt(half);
    const next = drawn + dt * (middle * draw - makeUp);
    if (next >= usable && drawn < usable) {
      // the step is parted where the tank runs dry, or the rate would jump with the grid
      const share = (usable - drawn) / (next - drawn);
      fills += dt * (share * middle + (1 - share) * dryRate);
      ranDry = (i + share) * dt;
    } else fills += dt * middle;
    drawn = Math.min(usable, Math.max(0, next));
    most = Math.max(most, drawn);
    worst = Math.min(worst, fillsAt(drawn));
  }
  return {
    rate: { mean: (fills * lanes) / duration, worst: worst * lanes },
    drawnMost: most,
    ...(ranDry === undefined ? {} : { ranDry }),
  };
};

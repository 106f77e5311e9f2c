import { conductance, type Opening, offset } from './balance.ts';
import type { LaneFill, StuckRow } from './filled-row.ts';
import type { Lane, Liquid } from './system.ts';

/** A lane in the course of a row. */
export interface FlowingLane {
  readonly lane: Lane;
  readonly opening: Opening;
  readonly changeOver: number;
  readonly count: number;
  /** Volume that covers a bottom-up nozzle; infinity where it is covered or never will be. */
  covers: number;
  slow: boolean;
  open: boolean;
  free: number;
  covered: number;
  fill?: LaneFill;
}

/** The row of lanes that can never end, by the lanes that are still open. */
export const stuckRow = (flowing: readonly FlowingLane[]): StuckRow => ({
  stuck: true,
  lanes: flowing.filter((f) => f.open).map((f) => f.lane.tag),
});

/** A lane whose level has yet to reach its nozzle, or never will, has a free jet. */
export const markFlow = (f: FlowingLane, flow: number): void => {
  if (f.lane.levelAt === undefined || f.covers !== Number.POSITIVE_INFINITY) f.free = Math.max(f.free, flow);
  else f.covered = Math.max(f.covered, flow);
};

/** Volume at which the level reaches the nozzle; infinity where the jet is always free. */
const coverVolume = (lane: Lane): number => {
  const { levelAt } = lane;
  if (levelAt === undefined || levelAt(0) >= lane.outlet) return Number.POSITIVE_INFINITY;
  let low = 0;
  let high = lane.preset / lane.pulses;
  if (!(levelAt(high) > lane.outlet)) return Number.POSITIVE_INFINITY;
  for (let i = 0; i < 50; i++) {
    const middle = 0.5 * (low + high);
    if (levelAt(middle) < lane.outlet) low = middle;
    else high = middle;
  }
  return high;
};

/** A lane as it opens: its counts as volumes, its opening to the balance. */
export const flowingLane = (lane: Lane, manifold: number, liquid: Liquid): FlowingLane => {
  const count = Math.max(0, lane.preset / lane.pulses - lane.phase);
  const changeOver = Math.min(count, Math.max(0, lane.changeOver / lane.pulses - lane.phase));
  const slow = changeOver <= 0 && lane.kvSlow !== lane.kv;
  return {
    lane,
    opening: {
      conductance: conductance(slow ? lane.kvSlow : lane.kv, liquid.density),
      offset: offset(manifold, lane.outlet, liquid.density),
    },
    changeOver: lane.kvSlow === lane.kv ? count : changeOver,
    count,
    covers: coverVolume(lane),
    slow,
    open: true,
    free: 0,
    covered: 0,
  };
};

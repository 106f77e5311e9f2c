import { presetsForLevel } from '../hydraulics/preset-for-level.ts';
import { laneFlow } from '../sheets/water/lane-flow.ts';
import { pipeVelocity } from '../sheets/water/pipe-velocity.ts';
import type { LaneFigures } from './assessment.ts';
import type { FloorInputs } from './read-floor.ts';
import type { FloorSolution } from './solve-floor.ts';
import type { LaneTrace } from './trace-lanes.ts';

/** What each lane does on this floor, and the count at which it would just reach the level. */
export const laneFigures = (
  inputs: FloorInputs,
  solution: FloorSolution,
  traces: readonly LaneTrace[],
): readonly LaneFigures[] => {
  const { fill } = solution;
  const { level, lanes } = inputs.model;
  if (fill === undefined) return [];
  const { system, row } = fill;
  const forLevel = level === undefined ? undefined : presetsForLevel(system, level, { from: row });
  return lanes.map((lane, i): LaneFigures => {
    const result = row.lanes[i]!;
    const { flow, fill: filled, dose } = traces[i] ?? {};
    const most = Math.max(result.flowFree, result.flowCovered);
    return {
      lane: lane.tag,
      preset: system.lanes[i]!.preset,
      presetFrom: lane.presetPath === undefined ? 'worked out' : 'book',
      flowAllOpen: laneFlow(lane.kv, fill.pressure, system.manifold, lane.outlet, system.liquid.density),
      flowAtEnd: result.flowAtEnd,
      countTime: result.countTime,
      fillTime: result.fillTime,
      volume: result.volume,
      afterRun: result.afterRun,
      overflow: level === undefined ? 0 : Math.max(0, result.volume - level),
      shortBy: level === undefined ? 0 : Math.max(0, level - result.volume),
      workings: {
        ...(flow === undefined ? {} : { flow }),
        ...(filled === undefined ? {} : { fill: filled }),
        ...(dose === undefined ? {} : { dose }),
      },
      ...(lane.nozzleBore === undefined ? {} : { nozzleVelocity: pipeVelocity(most, lane.nozzleBore) }),
      ...(forLevel === undefined ? {} : { presetForLevel: forLevel.presets[i]! }),
    };
  });
};

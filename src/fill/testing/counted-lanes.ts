import type { FillSystem } from '../../hydraulics/system.ts';
import type { TrueRow } from './floor-pair.ts';

/** Lanes that open together, are counted one by one and close, stepped through in time. */
export interface CountedLanes {
  /** How far the valve of a lane is open, 0 to 1: straight over its stroke. */
  readonly openShare: (lane: number, time: number) => number;
  /** From its start to the end of its stroke, or while it closes. */
  readonly moves: (lane: number, time: number, step: number) => boolean;
  /** What passed each lane in a step up to a moment, m3; a count is met within the step. */
  readonly pass: (volumes: readonly number[], time: number, step: number) => void;
  /** What was filled, once every lane is shut. */
  readonly row: (time: number) => TrueRow | undefined;
}

/** The lanes of a system before they open. */
export const countedLanes = ({ lanes }: FillSystem): CountedLanes => {
  const passed = lanes.map(() => 0);
  const counted = lanes.map(() => Number.POSITIVE_INFINITY);
  const counts = lanes.map(({ preset, pulses, phase }) => preset / pulses - phase);
  const shutAt = (i: number): number => counted[i]! + lanes[i]!.delay + lanes[i]!.closing;
  return {
    openShare: (i, time) => {
      const { closing } = lanes[i]!;
      return Math.max(0, Math.min(1, time / closing, (shutAt(i) - time) / closing));
    },
    moves: (i, time, step) => {
      const { closing, delay } = lanes[i]!;
      return time < closing || (time >= counted[i]! + delay - step && time < shutAt(i));
    },
    pass: (volumes, time, step) => {
      for (const [i, volume] of volumes.entries()) {
        if (counted[i] === Number.POSITIVE_INFINITY && passed[i]! + volume >= counts[i]!) {
          counted[i] = time - step * (1 - (counts[i]! - passed[i]!) / volume);
        }
        passed[i] = passed[i]! + volume;
      }
    },
    row: (time) =>
      lanes.every((_, i) => time >= shutAt(i))
        ? {
            volumes: lanes.map(({ afterDrip }, i) => passed[i]! + afterDrip),
            times: lanes.map((_, i) => shutAt(i)),
          }
        : undefined,
  };
};

import { fillRow } from './fill-row.ts';
import type { RowFill } from './filled-row.ts';
import { startStored } from './stored.ts';
import type { FillSystem, Lane } from './system.ts';

export interface LevelPresets {
  /** Smallest whole count of each lane at which its mean volume reaches the level. */
  readonly presets: readonly number[];
  /** The row with these counts. */
  readonly row: RowFill;
}

export interface LevelOptions {
  /** Lanes whose own count stays as it is. */
  readonly keep?: (lane: number) => boolean;
  /** A row with the counts that the lanes have: its after-runs are nearly those that are sought. */
  readonly from?: RowFill;
}

/** Rounds in which the flows at the end, and with them the after-runs, settle. */
const rounds = 6;

/**
 * Counts at which every bottle just reaches its level on this floor.
 *
 * Method   N = ceil(k (V_level - V_after + phase)), V_after = q tau + drip with q the flow at the lane's own end; that
 *          flow depends on when the others close, so the row is filled again until no count changes
 * Symbols  level  scalar  m3
 * Returns  counts and the row, or undefined where the row can't end
 * Source   design: the level goal is rounded up, never to the nearest
 */
export const presetsForLevel = (
  system: FillSystem,
  level: number,
  { keep = () => false, from }: LevelOptions = {},
): LevelPresets | undefined => {
  const start = startStored(system.source);
  const counts = (lanes: readonly Lane[], row: RowFill): readonly number[] =>
    lanes.map((lane, i) => {
      if (keep(i)) return lane.preset;
      const after = row.lanes[i]!.volume - Math.max(0, lane.preset / lane.pulses - lane.phase);
      // a count that is whole but for rounding is not the next one
      return Math.max(1, Math.ceil(lane.pulses * (level - after + lane.phase) - 1e-9));
    });
  let presets =
    from === undefined
      ? system.lanes.map((lane, i) => (keep(i) ? lane.preset : Math.max(1, Math.ceil(lane.pulses * level))))
      : counts(system.lanes, from);
  for (let round = 0; ; round++) {
    const lanes = system.lanes.map((lane, i) => ({ ...lane, preset: presets[i]! }));
    const row = fillRow({ ...system, lanes }, start);
    if ('stuck' in row) return undefined;
    const next = counts(lanes, row);
    if (next.every((count, i) => count === presets[i]) || round === rounds) return { presets, row };
    presets = next;
  }
};

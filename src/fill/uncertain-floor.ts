import type { FillSystem } from '../hydraulics/system.ts';

/** Something about a floor's supply that is not known exactly, such as a static pressure or the length of a hose. */
export interface SupplyUnknown {
  /** Where it stands, for whoever wants to name it. */
  readonly place: string;
  /** The floor with this value moved by so many standard deviations; its lanes stay as they are. */
  readonly moved: (system: FillSystem, deviations: number) => FillSystem;
}

/** How much of what a stiff run would do the liquid in it does while lanes open and close: 0 nothing, 1 all of it. */
export interface ColumnShare {
  readonly share: number;
  /** Standard deviation of what the lanes do to it; floors of one estimate err together. */
  readonly deviation: number;
  /** Standard deviation of what the run of this floor does to it, each floor for itself; absent where that is known. */
  readonly ofRun?: number;
}

/** A floor with what is not known of its supply; what is known of the lanes comes from trials. */
export interface UncertainFloor {
  readonly system: FillSystem;
  /** Independent of each other. */
  readonly unknowns: readonly SupplyUnknown[];
  /** Absent where there is no run: lanes then close as if each flow were steady at once. */
  readonly column?: ColumnShare;
}

/** The floor with its unknowns moved; only those that move are called. */
export const movedFloor = (floor: UncertainFloor, deviations: ArrayLike<number>): FillSystem => {
  let { system } = floor;
  floor.unknowns.forEach((unknown, i) => {
    const by = deviations[i] ?? 0;
    if (by !== 0) system = unknown.moved(system, by);
  });
  return system;
};

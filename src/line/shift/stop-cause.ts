/** To whom lost time is counted. */
export const owners = ['machine', 'supply', 'people', 'material'] as const;
export type Owner = (typeof owners)[number];

/** How the times between stops and the times to clear them vary. */
export type StopPattern =
  /** Like the gaps between chance events. */
  | { readonly kind: 'exponential' }
  /** Always the same. */
  | { readonly kind: 'constant' }
  /** In whole steps of so many seconds, with the same chance in each: stops that come at a stroke. */
  | { readonly kind: 'geometric'; readonly step: number };

/** Something that makes a station stand now and then. */
export interface StopCause {
  /** Tag; its chances come from a stream of this name, so another cause may come or go without moving them. */
  readonly cause: string;
  /** s, mean time between the end of a stop and the next */
  readonly between: number;
  /** s, mean time to clear */
  readonly clear: number;
  readonly owner: Owner;
  /** Absent: exponential. */
  readonly pattern?: StopPattern;
  /**
   * Whether `between` counts while the station works, or by the clock. Absent: while it works. A conveyor always runs,
   * so there it is the same. Causes by the clock of one station are cleared one after the other.
   */
  readonly counts?: 'working' | 'clock';
}

/** A guard opened or an emergency stop: several stations stand at once, by the clock. */
export interface LineStop {
  readonly cause: string;
  readonly stations: readonly string[];
  readonly between: number;
  readonly clear: number;
  readonly owner: Owner;
  readonly pattern?: StopPattern;
}

/** What was seen of the overflow: a trace is a bottle that has just reached its level. */
export type Overflow = 'none' | 'trace' | 'stream';

/** One bottle that was filled for trial, in SI. */
export interface FillTrial {
  /** Tag of the lane. */
  readonly lane: string;
  /** Pulses at which the lane was told to shut. */
  readonly preset: number;
  /** What is in the bottle, by weighing, m3; absent where it was not weighed. */
  readonly volume?: number;
  /** Standard uncertainty of that volume by itself, m3. */
  readonly volumeDeviation?: number;
  /** Standard uncertainty that it shares with all bottles of the trials, such as the balance's calibration, m3. */
  readonly commonDeviation?: number;
  /** From the opening of the lanes to the lane fully shut, s; absent where it was not timed. */
  readonly time?: number;
  /** Standard uncertainty of that time, s. */
  readonly timeDeviation?: number;
  readonly overflow: Overflow;
  /** Bottles of one row bear one name. */
  readonly row?: string;
  /** Lanes that ran in that row, this one counted in; all of them where it is not said. */
  readonly lanesOpen?: number;
  /** At the manifold while the lanes of the row were open, Pa gauge. */
  readonly pressure?: number;
  /** Standard uncertainty of that pressure, Pa. */
  readonly pressureDeviation?: number;
  /** The lane was throttled on purpose: its flow was another, and is known by its time alone. */
  readonly throttled?: boolean;
  /** First bottle after a stop: kept apart. */
  readonly afterStop?: boolean;
}

/** One bottle of a trial as its record says it; quantities as they were typed, with their unit. */
export interface WeighedTrial {
  /** Tag of the floor. */
  readonly floor: string;
  /** Tag of the lane. */
  readonly lane: string;
  readonly preset: number;
  readonly id?: string;
  /** Moment, ISO 8601. */
  readonly at?: string;
  readonly by?: string;
  readonly format?: string;
  readonly product?: string;
  readonly row?: string;
  readonly lanesOpen?: number;
  readonly time?: string;
  readonly gross?: string;
  readonly tare?: string;
  readonly volume?: string;
  readonly level?: string;
  readonly temperature?: string;
  readonly pressure?: string;
  readonly overflow?: 'none' | 'trace' | 'stream';
  readonly throttled?: boolean;
  readonly afterStop?: boolean;
  readonly instrument?: string;
  readonly resolution?: string;
  readonly calibrated?: string;
  readonly conditions?: string;
  readonly remark?: string;
}

/** One of the customer's bottles as it was measured. */
export interface MeasuredSample {
  readonly format: string;
  readonly bottle: string;
  readonly id?: string;
  readonly at?: string;
  readonly by?: string;
  readonly mould?: string;
  readonly mass?: string;
  readonly brimfulMass?: string;
  readonly levelMass?: string;
  readonly temperature?: string;
  readonly height?: string;
  readonly bore?: string;
  readonly finish?: string;
  readonly body?: string;
  readonly lean?: string;
  readonly closureMass?: string;
  readonly closureHeight?: string;
  readonly instrument?: string;
  readonly resolution?: string;
  readonly remark?: string;
}

/** One filled bottle of a lot. */
export interface WeighedPackage {
  readonly gross: string;
  readonly tare?: string;
  readonly lane?: string;
  readonly bottle?: string;
  readonly at?: string;
}

/** Bottles that were drawn from a lot and weighed. */
export interface WeighedLot {
  readonly floor: string;
  readonly format: string;
  readonly packages: readonly WeighedPackage[];
  readonly id?: string;
  readonly at?: string;
  readonly by?: string;
  readonly size?: number;
  readonly product?: string;
  readonly temperature?: string;
  readonly density?: string;
  readonly tares?: readonly string[];
  readonly instrument?: string;
  readonly resolution?: string;
  readonly conditions?: string;
  readonly remark?: string;
  /** What its rule wanted typed in, and the edition in which it was read. */
  readonly variation?: string;
  readonly tareSample?: number;
  readonly plan?: string;
  readonly table?: 'Australia' | 'New Zealand';
  readonly edition?: string;
}

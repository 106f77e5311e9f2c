/** One of the customer's bottles with its closure, as it was measured. SI; masses as the balance showed them. */
export interface BottleSample {
  /** Empty and dry. */
  readonly mass?: number;
  /** Filled with water to the brim, and to the level; the bottle counted in. */
  readonly brimfulMass?: number;
  readonly levelMass?: number;
  /** Of the water, K. */
  readonly temperature?: number;
  readonly height?: number;
  /** Of the neck at the level. */
  readonly bore?: number;
  /** Outside diameter of the finish, over which the cap goes. */
  readonly finish?: number;
  readonly body?: number;
  /** How far the mouth stands beside the middle of the foot. */
  readonly lean?: number;
  readonly closureMass?: number;
  readonly closureHeight?: number;
}

/** What is asked of the samples. */
export interface SampleQuestions {
  /** Of every bound; 0.95 where nothing is said. */
  readonly confidence?: number;
  /** Share of all bottles that the machine must take; 0.99 where nothing is said. */
  readonly coverage?: number;
  /** kg/m3; 1.2 where it is not known. */
  readonly airDensity?: number;
  /** Cubic expansion of the bottle, 1/K; that of glass where it is not known. */
  readonly expansion?: number;
  /** Points of level against volume, m and m3, where the level is not in a round neck. */
  readonly profile?: { readonly heights: readonly number[]; readonly volumes: readonly number[] };
  /** Height of the fill level in that profile, m. */
  readonly levelHeight?: number;
  /** Largest standard deviation of volume that is wanted, m3: such as T/1.96 of an average system. */
  readonly wantedSpread?: number;
  /** Brimful capacity that the bottles state where they are measuring containers, m3. */
  readonly statedBrimful?: number;
}

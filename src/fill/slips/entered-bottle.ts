/** A number of one field as it was entered. */
export interface Entered {
  /** SI. */
  readonly value: number;
  /** The digits that were typed, in the unit that was typed: `2.971`. Without them no turned digit is looked for. */
  readonly typed?: string;
}

/** One bottle of a trial as it was entered, before anything is made of it. */
export interface EnteredBottle {
  readonly lane: string;
  readonly preset: number;
  /** kg */
  readonly gross?: Entered;
  /** kg */
  readonly tare?: Entered;
  /** s */
  readonly time?: Entered;
  readonly overflow?: 'none' | 'trace' | 'stream';
  readonly lanesOpen?: number;
  readonly throttled?: boolean;
  readonly afterStop?: boolean;
}

/** What is known without any bottle. */
export interface SlipGround {
  readonly lanes: readonly {
    readonly tag: string;
    /** Pulses in a cubic metre; absent where nobody said. */
    readonly pulses?: number;
  }[];
  /** kg/m3 of what is filled; absent where it is not known. */
  readonly density?: number;
  /** Of the empty bottle, kg. */
  readonly emptyMass?: number;
  /** Volume to the level, m3. */
  readonly level?: number;
}

/** Mass of the contents; undefined where one of both was not weighed or can't be. */
export const netOf = ({ gross, tare }: EnteredBottle): number | undefined =>
  gross === undefined || tare === undefined ? undefined : gross.value - tare.value;

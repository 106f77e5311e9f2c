/** What may have happened at the keypad or at the balance. */
export type SlipCode =
  /** No tare, or none to speak of, where the others have one. */
  | 'tareForgotten'
  /** The gross is what the others have without their bottle: the balance was set to nought with it. */
  | 'alreadyNet'
  /** Gross and tare stand in each other's place. */
  | 'grossTareSwapped'
  /** The bottle fits another lane, not this one. */
  | 'laneSwapped'
  /** Two neighbouring digits in each other's place. */
  | 'digitsTurned'
  /** Another unit of mass: grams for kilograms, pounds, ounces. */
  | 'massUnit'
  /** Another unit of time: minutes, milliseconds. */
  | 'timeUnit'
  /** The decimal point one place off. */
  | 'decimalPoint'
  /** The count of another lane. */
  | 'neighbourPreset'
  /** Far from all others, for no reason that could be guessed. */
  | 'unlikeOthers';

export type SlipField = 'lane' | 'preset' | 'gross' | 'tare' | 'time';

/** A value that is questioned, never refused: what stands there may be true. */
export interface Slip {
  readonly code: SlipCode;
  readonly field: SlipField;
  /** As entered, SI; a tag for a lane. Absent where nothing was entered. */
  readonly entered?: number | string;
  /** What was likely meant, SI; absent where nobody can tell. Of swapped masses this field's own. */
  readonly likely?: number | string;
  /** With what it was compared: the net mass, the time or the tare that the others make likely. */
  readonly compared: {
    readonly of: 'net' | 'time' | 'tare';
    readonly given?: number;
    readonly expected: number;
    /** How far a good value may lie from that. */
    readonly within: number;
    /** Bottles behind the expectation; 0 where it comes from the book. */
    readonly bottles: number;
  };
}

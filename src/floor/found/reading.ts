/**
 * Something that was read on arrival, as its record says it. What was promised stands in the book and stays there: a
 * reading is laid over it only for an assessment.
 */
export interface FoundReading {
  /** Tag of the floor. */
  readonly floor: string;
  /** Place within the floor: `air/compressor/cutIn`. */
  readonly of: string;
  /** With its unit, as it was typed. */
  readonly value: string;
  /** Half width that holds the truth with 95 %. */
  readonly spread?: string;
  readonly by: string;
  /** Moment, ISO 8601. */
  readonly at: string;
  readonly instrument?: string;
  /** How many other users were drawing at that moment. */
  readonly users?: number;
  readonly conditions?: string;
}

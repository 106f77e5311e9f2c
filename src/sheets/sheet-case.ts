import type { Source, Values } from './frame.ts';

/** How far a figure may lie from the printed one; the wider of the two counts. */
export interface Tolerance {
  /** Share of the expected value. */
  readonly relative?: number;
  /** In the SI unit of the output. */
  readonly absolute?: number;
  readonly reason: string;
}

/** A published or independently computed example that a sheet must reproduce. */
export interface SheetCase {
  /** A sentence that names the source. */
  readonly name: string;
  readonly source: Source;
  readonly inputs: Values;
  /** The outputs that the source gives, not necessarily all. */
  readonly outputs: Values;
  readonly tolerance: Tolerance;
  /** Codes of notes that must come with it. */
  readonly notes?: readonly string[];
}

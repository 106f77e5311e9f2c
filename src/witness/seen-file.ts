import type { Head } from '../record/envelope.ts';

/** What the file says of itself to its script, as JSON. */
export interface SeenFile {
  readonly book: string;
  readonly revision: number;
  /** SHA-256 of what the file shows. */
  readonly file: string;
  readonly heads: readonly Head[];
}
